import { markOf } from '/core/marks.js';
import { same, spec } from './spec.js';

const pair = index => `${markOf(index).shape} ${markOf(index).colour}`;
const first = count => Array.from({ length: count }, (_, index) => index);

// Okabe and Ito, "Color Universal Design" (2008): the eight colours of the set, the last of them the ink itself.
const OKABE_ITO = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#56b4e9', '#e69f00', '#f0e442', null];

spec('gives the first eight teams the colours of the colour-blind-safe set', () =>
  same(first(8).map(index => markOf(index).colour), OKABE_ITO));

spec('gives each of the first eight teams a shape of its own', () =>
  same(new Set(first(8).map(index => markOf(index).shape)).size, 8));

spec('gives sixty-four teams a pair of their own', () => same(new Set(first(64).map(pair)).size, 64));
