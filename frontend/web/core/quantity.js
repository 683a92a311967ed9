/**
 * Reads a typed number as the server will, so that the echo can come before the network does. The server's reading is
 * the truth; one golden file of cases keeps both the same.
 */
import { decimalReadings, plainText, unitSpelling } from './spelling.js';

const LONGEST = 40;
const EXAMPLES = '60; 0.06; 0,06';

/**
 * @param text as typed
 * @param unitKey unit chosen beside the field, or null; a unit inside the text wins
 * @param quantities quantities that fit the field
 * @param units the catalogue's units
 * @returns {kind: 'understood', amounts: [one]} | {kind: 'ambiguous', amounts} | {kind: 'misunderstood', slip, value,
 *   expected}; an amount is {text, unit, valueSi, resolutionSi}
 */
export function readNumber(text, unitKey, quantities, units) {
  const plain = plainText(text);
  if (plain === '') return misunderstood('EMPTY', '', EXAMPLES);
  const parts = split(plain);
  if (plain.length > LONGEST || !parts || parts.numbers.length === 0) return notANumber(text);
  const unit = unitOf(parts.unit, unitKey, quantities, units);
  if (unit.slip) return unit.slip === 'NOT_A_NUMBER' ? notANumber(text) : unit;
  return understood(parts.numbers.map(number => amount(number, parts.numbers.length > 1, text, unit)));
}

/** The area of two typed sides, {kind, ...} as for a number, its amount in m2. */
export function readSides(first, second, unitKey, units) {
  const sides = [first, second].map(side => readNumber(side, unitKey, ['length'], units));
  const wrong = sides.find(side => side.kind !== 'understood');
  if (wrong) return wrong;
  const [a, b] = sides.map(side => side.amounts[0]);
  return understood([{ ...b, text: `${first} x ${second}`, valueSi: a.valueSi * b.valueSi,
    resolutionSi: Math.abs(a.valueSi) * b.resolutionSi + Math.abs(b.valueSi) * a.resolutionSi }]);
}

function split(plain) {
  const [, sign, digits, rest] = /^([+-]?) ?([\d.,' ]*)(.*)$/.exec(plain) ?? [];
  if (digits === undefined) return null;
  const power = /\d$/.test(digits) ? /^[eE]([+-]?\d{1,2})(?!\d)(.*)$/.exec(rest) : null;
  const exponent = power ? Number(power[1]) : 0;
  const numbers = decimalReadings(digits.trim())
    .map(reading => ({ sign, reading, exponent }));
  return { numbers, unit: (power ? power[2] : rest).trim() };
}

function unitOf(typed, unitKey, quantities, units) {
  if (typed === '') return units.find(unit => unit.key === unitKey) ?? unknownUnit('', quantities, units);
  const spelling = unitSpelling(typed);
  const meant = units.filter(unit => unit.symbols.some(symbol => unitSpelling(symbol) === spelling));
  const fits = meant.find(unit => quantities.includes(unit.quantity));
  if (fits) return fits;
  if (meant.length > 0) return misunderstood('WRONG_UNIT', typed, symbols(quantities, units));
  return /^[\p{L}/°%. ]/u.test(typed) ? unknownUnit(typed, quantities, units) : { slip: 'NOT_A_NUMBER' };
}

function amount({ sign, reading, exponent }, chosen, text, unit) {
  const decimals = (reading.split('.')[1] ?? '').length;
  const value = Number(`${sign === '-' ? '-' : ''}${reading}e${exponent}`);
  return {
    text: chosen ? `${sign}${reading}` : text,
    unit: unit.key,
    valueSi: value * unit.toSi + unit.offsetSi,
    resolutionSi: 10 ** (exponent - decimals) * unit.toSi,
  };
}

const symbols = (quantities, units) =>
  units.filter(unit => quantities.includes(unit.quantity)).map(unit => unit.symbols[0]).join(', ');

const unknownUnit = (typed, quantities, units) => misunderstood('UNKNOWN_UNIT', typed, symbols(quantities, units));
const notANumber = text => misunderstood('NOT_A_NUMBER', text.trim(), EXAMPLES);
const misunderstood = (slip, value, expected) => ({ kind: 'misunderstood', slip, value, expected });
const understood = amounts => ({ kind: amounts.length === 1 ? 'understood' : 'ambiguous', amounts });
