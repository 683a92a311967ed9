/** Rows of a load sweep as typed: which two columns a team reads, what was understood, and the point that follows. */
import { readNumber } from '../core/quantity.js';
import { verdictOn } from '../entry/echo.js';

/** The columns of each way to sweep: two, or any two of three. */
export const WAYS = {
  loadVoltage: ['load', 'voltage'],
  loadCurrent: ['load', 'current'],
  voltageCurrent: ['voltage', 'current'],
  anyTwo: ['load', 'voltage', 'current'],
};

/** The ways that a form offers; the other one opens sweeps whose rows differ. */
export const OFFERED = ['loadVoltage', 'loadCurrent', 'voltageCurrent'];

/** Units to choose from for what the meter shows. */
export const METER_UNITS = { voltage: ['mV', 'V'], current: ['uA', 'mA'] };

export const NO_ROW = { load: '', voltage: '', current: '' };

/** A row counts once a meter's number stands in it; a resistor alone is a plan. */
export const isFilled = (row, way) => WAYS[way].some(column => column !== 'load' && text(row, column) !== '');

/** {column: {tone, amount, ...}} of a row's columns. */
export function readRow(row, way, { units, unitOf, fieldOf }) {
  return Object.fromEntries(WAYS[way].map(column => {
    const field = fieldOf(column);
    const verdict = verdictOn(readNumber(text(row, column), unitOf(column), [field.quantity], units), field, units);
    return [column, way === 'loadVoltage' && isNoLoad(column, verdict) ? { ...verdict, tone: 'impossible' } : verdict];
  }));
}

/** A voltage across no load tells no current. */
const isNoLoad = (column, { amount }) => column === 'load' && amount?.valueSi === 0;

/** The worst tone of a row that counts, `empty` of one that does not; half a row is impossible. */
export function toneOf(row, way, verdicts) {
  if (!isFilled(row, way)) return 'empty';
  const all = Object.values(verdicts).map(({ tone }) => tone);
  const tones = way === 'anyTwo' && all.filter(tone => tone === 'empty').length === 1 ? all.filter(tone => tone !== 'empty') : all;
  if (tones.some(tone => ['impossible', 'ask', 'empty'].includes(tone))) return 'impossible';
  return tones.includes('unusual') ? 'unusual' : 'fine';
}

/** {ohm, voltageV, currentA} by Ohm's law, or null while a number is missing. */
export function pointOf(verdicts) {
  const value = column => verdicts[column]?.amount?.valueSi;
  const [ohm, voltageV, currentA] = ['load', 'voltage', 'current'].map(value);
  const point = {
    ohm: ohm ?? voltageV / currentA,
    voltageV: voltageV ?? ohm * currentA,
    currentA: currentA ?? voltageV / ohm,
  };
  return Object.values(point).every(Number.isFinite) ? point : null;
}

/** The row as it travels. */
export function sweepPoint(row, way, unitOf) {
  const typed = column => (WAYS[way].includes(column) && text(row, column) !== '' ? { text: text(row, column), unit: unitOf(column) } : null);
  return { load: typed('load'), voltage: typed('voltage'), current: typed('current') };
}

const text = (row, column) => (row[column] ?? '').trim();
