import { setUpOf, stationRequest } from '/days/copy.js';
import { found } from '/days/find.js';
import { standing } from '/days/kept.js';
import { same, spec } from './spec.js';

const days = [{ title: 'Berry cells, Zürich' }, { title: 'Leaf cells' }, { title: 'Berries again' }];
const titled = typed => found(days, typed, ({ title }) => title).map(({ title }) => title);

spec('finds days by every typed word, without capitals and accents', () => {
  same(titled('zurich BERRY'), ['Berry cells, Zürich']);
  same(titled('cells'), ['Berry cells, Zürich', 'Leaf cells']);
  same(titled('  ').length, 3);
});

spec('reminds of a day from two weeks before its date', () => {
  same([null, '2027-01-16', '2027-01-15', '2027-01-01', '2026-12-31'].map(date => standing(date, '2027-01-01')), ['none', 'far', 'near', 'near', 'over']);
});

spec('copies a station as it stands after its last correction', () => {
  const settings = [{ lamp: 'halogen' }, { lamp: 'coolLed', instrument: 'luxMeter', distance: { text: '30', unit: 'cm' }, angle: null, reason: 'LED' }];
  same(stationRequest('7', { id: 1, name: 'Desk', settings }),
    { labDayId: '7', name: 'Desk', lamp: 'coolLed', instrument: 'luxMeter', distance: { text: '30', unit: 'cm' }, angle: null });
});

spec('sends the same again under the same identities', async () => {
  const asked = [];
  const put = async path => { asked.push(path); };
  const setUp = setUpOf([{ name: 'Desk', settings: [{}] }], {}, put);
  await setUp.into('7');
  await setUp.into('7');
  same(asked.slice(0, 2), asked.slice(2));
  same(asked.length, 4);
});
