import { leaderNews } from '/wall/announce.js';
import { commonDecimals } from '/wall/decimals.js';
import { pagesOf } from '/wall/pages.js';
import { placeOf } from '/core/place.js';
import { same, spec } from './spec.js';

const led = name => ({ teams: [{ place: 1, name }] });

spec('shows a place alone when it is certain', () => same(placeOf({ place: 3, placeLow: 3, placeHigh: 3 }), '3'));

spec('shows all places that the uncertainties allow', () => same(placeOf({ place: 3, placeLow: 2, placeHigh: 4 }), '2–4'));

spec('shows no place before there is a result', () => same(placeOf({ place: null, placeLow: null, placeHigh: null }), null));

spec('puts teams on pages of nearly equal length', () =>
  same(pagesOf([1, 2, 3, 4, 5, 6, 7], 4), [[1, 2, 3, 4], [5, 6, 7]]));

spec('puts all teams on one page where they fit', () => same(pagesOf([1, 2, 3], Infinity), [[1, 2, 3]]));

spec('has one empty page without teams', () => same(pagesOf([], 8), [[]]));

const sureTo = microwatts => ({ figure: { unit: 'Wm2', standardUncertainty: microwatts / 100 } });

spec('gives the whole column the decimals of its middle team', () =>
  same(commonDecimals([sureTo(3), sureTo(0.5), sureTo(0.4), sureTo(0.03), { figure: null }]), 1));

spec('needs no decimals before there is a figure', () => same(commonDecimals([]), 0));

spec('tells a new leader at most every half minute', () => {
  let now = 0;
  const news = leaderNews(() => now);
  const first = news(led('A'));
  now = 10_000;
  const tooSoon = news(led('B'));
  now = 31_000;
  const later = news(led('B'));
  same([tooSoon === first, later === first], [true, false]);
});
