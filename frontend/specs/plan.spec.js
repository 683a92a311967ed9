import { comparableParameters, firstDraft, openParameters, withFactor, withFixed, withLevel, withoutLevel } from '/plan/draft.js';
import { hours, ratio } from '/plan/names.js';
import { same, spec } from './spec.js';

const start = firstDraft({ cellsPerTeam: 3 }, []);
const level = text => ({ text, unit: null });
const catalogue = { parameters: [{ key: 'dyeSource' }, { key: 'bakeTemperature' }, { key: 'soakTime' }] };

spec('a first plan takes the number of cells from the day and eight teams while none has joined', () => {
  same([start.teams, start.cellsPerTeam], [8, 3]);
  same(firstDraft({ cellsPerTeam: 2 }, [{}, {}, {}]).teams, 3);
});

spec('what is varied is not the same for all any more', () => {
  const draft = withLevel(start, 'bakeTemperature', { text: '350', unit: 'degC' });
  same(draft.fixed.map(({ parameter }) => parameter), ['bakeTime']);
  same(openParameters(draft, catalogue).map(({ key }) => key), ['dyeSource', 'soakTime']);
});

spec('what is the same for all may be compared all the same', () => {
  same(comparableParameters(start, catalogue).map(({ key }) => key), ['dyeSource', 'bakeTemperature', 'soakTime']);
});

spec('a factor whose last level is taken out is gone, and so are the rules that name it', () => {
  const one = withLevel(start, 'dyeSource', level('beetroot'));
  const ruled = { ...one, forbidden: [{ levels: [{ parameter: 'dyeSource', ...level('beetroot') }] }] };
  const draft = withoutLevel(ruled, 'dyeSource', 0);
  same([draft.factors, draft.forbidden], [[], []]);
});

spec('a factor is added once, and holding something fixed replaces what was fixed before', () => {
  same(withFactor(withFactor(start, 'soakTime'), 'soakTime').factors.length, 1);
  const draft = withFixed(start, { parameter: 'bakeTime', text: '45', unit: 'min' });
  same(draft.fixed.filter(({ parameter }) => parameter === 'bakeTime').map(({ text }) => text), ['45']);
});

spec('minutes read as hours and minutes, ratios with two digits', () => {
  same([hours(0), hours(65), hours(300)], ['0:00', '1:05', '5:00']);
  same([ratio(2.2647), ratio(12.7)], ['2.3', '13']);
});
