import { readArea, readNumber } from '/core/quantity.js';
import { close, same, spec } from './spec.js';

const json = async path => (await fetch(path)).json();
const golden = await json('/specs/quantity/typed-numbers.json');
const { units } = await json('/api/catalogue');

for (const it of golden.numbers) {
  spec(`number “${it.text}” beside ${it.unit} means ${it.means}${it.why ? `, since ${it.why}` : ''}`,
    () => matches(readNumber(it.text, it.unit, it.allowed, units), it));
}

for (const it of golden.areas) {
  spec(`area “${it.text}” beside ${it.unit} means ${it.means}`, () => matches(readArea(it.text, it.unit, units), it));
}

const KINDS = { one: 'understood', several: 'ambiguous', nothing: 'misunderstood' };

function matches(read, { means, readings = [], slip, value }) {
  same(read.kind, KINDS[means]);
  if (means === 'nothing') return same([read.slip, read.value], [slip, value]);
  same(read.amounts.length, readings.length);
  return readings.forEach((reading, i) => matchesReading(read.amounts[i], reading));
}

function matchesReading(amount, { text, unitKey, valueSi, resolutionSi }) {
  same(amount.unit, unitKey);
  close(amount.valueSi, valueSi, 'value');
  if (resolutionSi !== undefined) close(amount.resolutionSi, resolutionSi, 'resolution');
  if (text !== undefined) same(amount.text, text);
}
