import { Toggles, draftOfToggles, noToggles } from '/bench/toggles.js';
import { readingWords } from '/bench/words.js';
import { get } from '/core/http.js';
import { same, spec } from './spec.js';

const catalogue = await get('/api/catalogue');
const typed = (text, unit) => ({ text, unit });
const recorded = (...numbers) => ({ kind: 'toggles', toggles: numbers.map((each, i) => ({ lit: i % 2 === 1, typed: each })) });
const currents = (...texts) => new Toggles({ unit: 'uA', texts }, catalogue);

spec('opens recorded toggles with their numbers as they were typed', () =>
  same(draftOfToggles(recorded(typed('0,0', 'mV'), typed('640', 'mV')), catalogue.units), { unit: 'mV', texts: ['0,0', '640'] }));

spec('writes a unit behind a number that had another one beside it', () =>
  same(draftOfToggles(recorded(typed('0', 'uA'), typed('0.04', 'mA')), catalogue.units), { unit: 'uA', texts: ['0', '0.04 mA'] }));

spec('opens numbers in a unit that is not offered in one that is', () =>
  same(draftOfToggles(recorded(typed('0', 'A'), typed('0.00004', 'A')), catalogue.units), { unit: 'uA', texts: ['0 A', '0.00004 A'] }));

spec('asks for every number', () => {
  same(new Toggles(noToggles(), catalogue).trouble === null, false);
  same(currents('0', '45', '0', '45', '0', '').trouble === null, false);
  same(currents('0', '45', '0', '45', '0', '45').trouble, null);
});

spec('sends as many numbers as there are, in the quantity of their unit', () =>
  same(new Toggles({ unit: 'mV', texts: ['0', ' 640 '] }, catalogue).sent[1], { load: null, voltage: typed('640', 'mV'), current: null }));

spec('finds the pair of a refused number', () => same([0, 1, 4, 5].map(currents().rowOfSent), [0, 0, 2, 2]));

spec('tells what was covered and open, in the words of the server or of this phone', () => {
  const known = { kind: 'toggles', toggles: [{ typed: typed('0', 'uA'), currentA: 0 }, { typed: typed('45', 'uA'), currentA: 4.5e-5 }] };
  const waiting = { kind: 'toggles', points: [{ load: null, voltage: null, current: typed('0', 'uA') }, { load: null, voltage: null, current: typed('45', 'uA') }] };
  same([known, waiting].map(reading => readingWords(reading, catalogue.units).replace(/\s/g, ' ')), ['0 A → 45 µA', '0 µA → 45 µA']);
});
