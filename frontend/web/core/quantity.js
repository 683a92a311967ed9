/**
 * Reads typed numbers and areas as the server will, so that the echo can come before the network does. The server's
 * reading is the truth; one golden file of cases keeps both the same.
 *
 * Every function answers {kind: 'understood', amounts: [one]}, {kind: 'ambiguous', amounts} or {kind: 'misunderstood',
 * slip, value, expected}; an amount is {text, unit, valueSi, resolutionSi}.
 */
import { decimalReadings, plainText, unitSpelling } from './spelling.js';

const LONGEST = 40;
const EXAMPLES = '60; 0.06; 0,06';
const AREA_EXAMPLES = '15 x 15; 1,5 x 2; 2.25';

/**
 * @param text as typed
 * @param unitKey unit chosen beside the field, or null; a unit inside the text wins
 * @param quantities quantities that fit the field
 * @param units the catalogue's units
 */
export function readNumber(text, unitKey, quantities, units) {
  const plain = plainText(text);
  if (plain === '') return misunderstood('EMPTY', '', EXAMPLES);
  const { spellings, unit: typed } = split(plain);
  if (plain.length > LONGEST || spellings.length === 0 || !looksLikeUnit(typed, units)) return notANumber(text);
  const unit = unitOf(typed, unitKey, quantities, units);
  return unit ? amountsOf(text, spellings, unit) : wrongUnit(typed || unitKey, quantities, units);
}

/** Two sides ("15 x 15" beside mm) or an area ("2,25" beside cm2), in m2. */
export function readArea(text, unitKey, units) {
  const sides = text.split(/[xX\u00d7*\u2715]/);
  if (sides.length === 1) return readNumber(text, unitKey, ['area'], units);
  if (sides.length > 2) return misunderstood('NOT_A_NUMBER', text.trim(), AREA_EXAMPLES);
  return readSides(text, sides, unitKey, units);
}

/** A unit typed behind one side counts for the other, too. */
function readSides(text, [a, b], unitKey, units) {
  const side = (typed, key) => readNumber(typed, key, ['length'], units);
  const first = side(a, unitBehind(side(b, unitKey), unitKey));
  const second = side(b, unitBehind(first, unitKey));
  const wrong = [first, second].find(each => each.kind === 'misunderstood');
  return wrong ?? understood(rectangles(text.trim(), first.amounts, second.amounts, units));
}

const unitBehind = (side, otherwise) => (side.kind === 'misunderstood' ? otherwise : side.amounts[0].unit);

/** Where both sides can be read in two ways, one hand wrote both: they are read in the same way. */
function rectangles(text, first, second, units) {
  const count = Math.max(first.length, second.length);
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [first, second].map(side => side[Math.min(i, side.length - 1)]);
    return rectangle(count === 1 ? text : `${a.text} x ${b.text} ${b.unit}`, a, b, units);
  });
}

function rectangle(text, a, b, units) {
  const square = units.find(unit => unit.key === `${b.unit}2`)?.key ?? 'mm2';
  const resolutionSi = Math.abs(a.valueSi) * b.resolutionSi + Math.abs(b.valueSi) * a.resolutionSi;
  return { text, unit: square, valueSi: a.valueSi < 0 || b.valueSi < 0 ? -Math.abs(a.valueSi * b.valueSi) : a.valueSi * b.valueSi, resolutionSi };
}

/** Digits and what stands behind them; an exponent needs a digit before it and none after its two. */
function split(plain) {
  const [, sign, digits, rest] = /^([+-]?) ?([\d.,' ]*)(.*)$/.exec(plain);
  const power = /\d$/.test(digits) ? /^[eE]([+-]?\d{1,2})(?!\d)(.*)$/.exec(rest) : null;
  const exponent = power ? `e${power[1]}` : '';
  return {
    spellings: decimalReadings(digits.trim()).map(reading => sign + reading + exponent),
    unit: (power ? power[2] : rest).trim(),
  };
}

function looksLikeUnit(text, units) {
  const word = /^[\p{L}/°%. ]+$/u.test(text) && !/^[oOlI]+$/.test(text);
  return text === '' || word || meant(text, units).length > 0;
}

function unitOf(typed, unitKey, quantities, units) {
  const fitting = units.filter(unit => quantities.includes(unit.quantity));
  if (typed) return meant(typed, fitting)[0];
  if (unitKey == null) return fitting.length === 1 ? fitting[0] : undefined;
  return fitting.find(unit => unit.key === unitKey);
}

const meant = (typed, units) =>
  units.filter(unit => unit.symbols.some(symbol => unitSpelling(symbol) === unitSpelling(typed)));

function amountsOf(text, spellings, unit) {
  if (spellings.length === 1) return understood([amount(text.trim(), spellings[0], unit)]);
  return understood(spellings.map(spelling => amount(spelling, spelling, unit)));
}

function amount(text, spelling, unit) {
  const [digits, exponent = '0'] = spelling.split(/e/i);
  const decimals = (digits.split('.')[1] ?? '').length;
  return {
    text,
    unit: unit.key,
    valueSi: Number(spelling) * unit.toSi + unit.offsetSi,
    resolutionSi: Number(`1e${Number(exponent) - decimals}`) * unit.toSi,
  };
}

function wrongUnit(given, quantities, units) {
  const known = units.some(unit => unit.key === given) || meant(given ?? '', units).length > 0;
  const fitting = units.filter(unit => quantities.includes(unit.quantity)).map(unit => unit.symbols[0]);
  return misunderstood(known ? 'WRONG_UNIT' : 'UNKNOWN_UNIT', given ?? '', fitting.join(', '));
}

const notANumber = text => misunderstood('NOT_A_NUMBER', text.trim(), EXAMPLES);
const misunderstood = (slip, value, expected) => ({ kind: 'misunderstood', slip, value, expected });
const understood = amounts => ({ kind: amounts.length === 1 ? 'understood' : 'ambiguous', amounts });
