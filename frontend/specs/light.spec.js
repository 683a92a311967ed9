import { typedParts } from '/light/typed.js';
import { same, spec } from './spec.js';

const UNITS = [{ key: 'lx', symbols: ['lx'] }, { key: 'klx', symbols: ['klx'] }, { key: 'Wm2', symbols: ['W/m²', 'W/m2'] }];

spec('shows a bare number with the unit chosen beside it', () =>
  same(typedParts({ text: '12.0', unit: 'klx' }, UNITS), { number: '12.0', unit: 'klx' }));

spec('shows a unit inside the text once, as it is written', () =>
  same(typedParts({ text: '124 W/m2', unit: 'lx' }, UNITS), { number: '124', unit: 'W/m²' }));
