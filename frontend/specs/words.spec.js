import { readingWords } from '/bench/words.js';
import { same, spec } from './spec.js';

const UNITS = [{ key: 'uA', symbols: ['µA'] }, { key: 'mV', symbols: ['mV'] }];
const waiting = (voltage, current) => readingWords({ kind: 'dark', voltage, current }, UNITS);

spec('says a waiting reading as it was typed, with the unit chosen beside it', () =>
  same(waiting({ text: '0,50', unit: 'mV' }, { text: '-0.3', unit: 'uA' }), '0,50 mV, -0.3 µA'));

spec('does not say a unit twice when it was typed', () =>
  same(waiting({ text: '2 mV', unit: 'mV' }, null), '2 mV'));
