/** Numbers, intervals and clock times for people. Digits follow the interval; nothing here computes a result. */

import { DATES, DECIMAL, GROUP, NUMBERS } from './language.js';

const MINUS = '\u2212';
const PREFIXES = [[1e6, 'M'], [1e3, 'k'], [1, ''], [1e-3, 'm'], [1e-6, 'µ'], [1e-9, 'n']];

/** A number with so many decimals and a true minus sign. */
export const fixed = (value, decimals) =>
  written(value, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });

/** A number with up to four significant digits, trailing zeros dropped. */
export const plain = value =>
  written(value, { maximumSignificantDigits: 4 });

/** A number as this language writes it, with a true minus sign. */
const written = (value, digits) =>
  new Intl.NumberFormat(NUMBERS, digits).formatToParts(value).map(partOf).join('');

/** The number that such a text shows; `group` parts its thousands: ('6,3', '\u202f') -> 6.3. */
export const shownNumber = (text, group = GROUP) =>
  Number(text.replaceAll(group, '').replace(',', '.').replace(MINUS, '-'));

/** A calculation as the server spells it, with this language's decimal mark and true minus signs: "0.51 · -3 mV" -> "0,51 · −3 mV". */
export const spelled = (calculation, decimal = DECIMAL) =>
  calculation.replace(/(?<=\d)\.(?=\d)/g, decimal).replace(/(?<![\w)])-(?=\d)/g, MINUS);

const partOf = ({ type, value }) => ({ group: GROUP, minusSign: MINUS }[type] ?? value);

/** Decimals that an uncertainty justifies: two digits of it when it begins with 1, else one; in [0, 6]. */
export function decimalsFor(uncertainty) {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) return 3;
  const exponent = Math.floor(Math.log10(uncertainty));
  const leading = uncertainty / 10 ** exponent;
  return Math.min(6, Math.max(0, (leading < 1.95 ? 1 : 0) - exponent));
}

/** A figure {value, standardUncertainty, low, high} in a unit of `scale` SI, as texts {value, low, high, unit}. */
export function figureTexts(figure, scale, unit) {
  const uncertainty = figure.standardUncertainty / scale;
  const text = value => fixed(rounded(value / scale, uncertainty), decimalsFor(uncertainty));
  return { value: text(figure.value), low: text(figure.low), high: text(figure.high), unit };
}

/** Whole tens, hundreds ... where the uncertainty justifies no more. */
function rounded(value, uncertainty) {
  if (!(uncertainty >= 19.5) || !Number.isFinite(uncertainty)) return value;
  const exponent = Math.floor(Math.log10(uncertainty));
  const step = 10 ** (uncertainty / 10 ** exponent < 1.95 ? exponent - 1 : exponent);
  return Math.round(value / step) * step;
}

/** Power per area, SI W/m2, shown in µW/cm² (1 W/m² = 100 µW/cm²). */
export const powerDensityTexts = figure => figureTexts(figure, 0.01, 'µW/cm²');

/** Current per area, SI A/m2, shown in µA/cm² (1 A/m² = 100 µA/cm²). */
export const currentDensityTexts = figure => figureTexts(figure, 0.01, 'µA/cm²');

/** Voltage, SI V, shown in mV. */
export const voltageTexts = figure => figureTexts(figure, 1e-3, 'mV');

/** A value in a base unit with a fitting prefix and three significant digits: (0.00045, 'A') -> "450 µA". */
export function prefixed(value, unit) {
  const [scale, prefix] = PREFIXES.find(([size]) => Math.abs(value) >= size * 0.9995) ?? [1, ''];
  const text = written(value / scale, { maximumSignificantDigits: 3 });
  return `${text} ${prefix}${unit}`;
}

/** A value with its standard uncertainty, both with one prefix: (5.87e-5, 1.5e-6, 'A') -> "58.7 ± 1.5 µA". */
export function plusMinus(value, uncertainty, unit) {
  const [scale, shown] = scaleOf(Math.abs(value) || uncertainty, unit);
  const decimals = decimalsFor(uncertainty / scale);
  return `${fixed(value / scale, decimals)} ± ${fixed(uncertainty / scale, decimals)} ${shown}`.trim();
}

/** The size and name of the unit in which a quantity of this size is shown: (0.0004, 'A') -> [1e-6, 'µA']. */
export function scaleOf(size, unit) {
  if (unit === 'm²') return [1e-4, 'cm²'];
  if (!['A', 'V', 'W'].includes(unit)) return [1, unit === '1' ? '' : unit];
  const [scale, prefix] = PREFIXES.find(([step]) => size >= step) ?? PREFIXES.at(-1);
  return [scale, prefix + unit];
}

/** Clock time of an instant, "14:52". */
export const clock = instant =>
  new Date(instant).toLocaleTimeString(DATES, { hour: '2-digit', minute: '2-digit' });

/** A date as written in a lab book, "25 November 2026". */
export const day = date =>
  new Date(`${date}T12:00:00`).toLocaleDateString(DATES, { day: 'numeric', month: 'long', year: 'numeric' });

/** The same where there is little room and the year is plain, "25 Nov". */
export const dayInYear = date => new Date(`${date}T12:00:00`).toLocaleDateString(DATES, { day: 'numeric', month: 'short' });

/** The date where this browser is, as a date field wants it. */
export function dateHere(instant) {
  const at = new Date(instant);
  return [at.getFullYear(), at.getMonth() + 1, at.getDate()].map(number => String(number).padStart(2, '0')).join('-');
}
