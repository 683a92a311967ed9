import { judge, settle } from '/core/plausibility.js';
import { same, spec } from './spec.js';

const UNITS = [
  { key: 'V', quantity: 'voltage', symbols: ['V'], toSi: 1, offsetSi: 0 },
  { key: 'mV', quantity: 'voltage', symbols: ['mV'], toSi: 1e-3, offsetSi: 0 },
  { key: 'uV', quantity: 'voltage', symbols: ['µV'], toSi: 1e-6, offsetSi: 0 },
];
const FIELD = { units: ['mV', 'V', 'uV'], possibleLowSi: -2, possibleHighSi: 2, usualLowSi: -0.3, usualHighSi: 0.9 };
const judged = (valueSi, unit) => {
  const { verdict, likely } = judge(FIELD, { valueSi, unit }, UNITS);
  return [verdict, likely?.key ?? null];
};

spec('takes a usual number as fine', () => same(judged(0.06, 'mV'), ['fine', null]));
spec('takes the ends of the usual range as fine', () => same([judged(-0.3, 'V')[0], judged(0.9, 'V')[0]], ['fine', 'fine']));
spec('asks about a possible but unusual number', () => same(judged(1.2, 'V'), ['unusual', null]));
spec('names the likely slip of a number far outside', () => same([judged(1.9, 'V'), judged(-0.7, 'V')], [['unusual', 'mV'], ['unusual', 'mV']]));
spec('refuses 45 V and names the nearest likely slip', () => same(judged(45, 'V'), ['impossible', 'mV']));
spec('names no slip when none explains the number', () => same(judged(4e9, 'V'), ['impossible', null]));
spec('refuses what is not a number at all', () => same(judged(NaN, 'V')[0], 'impossible'));

const reading = valueSi => ({ valueSi, unit: 'V' });
spec('settles 1,234 V as 1.234 V, since 1234 V cannot be', () =>
  same(settle(FIELD, { kind: 'ambiguous', amounts: [reading(1.234), reading(1234)] }), { kind: 'understood', amounts: [reading(1.234)] }));
spec('leaves a number open when both readings can be', () =>
  same(settle(FIELD, { kind: 'ambiguous', amounts: [reading(0.001), reading(1)] }).kind, 'ambiguous'));
