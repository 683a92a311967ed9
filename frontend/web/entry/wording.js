/** The sentences of a numeric entry: amounts and ranges in the unit the person chose. */
import { fixed, plain } from '../core/format.js';
import { GROUP } from '../core/language.js';

/** The sign to show beside a number; nothing beside a plain one. */
export const symbolOf = unit => (unit.key === 'one' ? '' : unit.symbols[0]);

export const unitOf = (key, units) => units.find(unit => unit.key === key);

/** The amount as typed, trailing zeros kept: 0.50 is not 0.5. */
export function typedAmount(amount, units) {
  const unit = unitOf(amount.unit, units);
  return `${digits(amount, unit)} ${symbolOf(unit)}`.trim();
}

/** The same amount in another of the field's units, where it makes a number one can picture; else null. */
export function otherwise(amount, field, units) {
  const other = field.units.map(key => unitOf(key, units))
    .find(unit => unit && unit.key !== amount.unit && pictured((amount.valueSi - unit.offsetSi) / unit.toSi));
  return other ? `${digits(amount, other)} ${symbolOf(other)}`.trim() : null;
}

const pictured = number => Math.abs(number) >= 0.01 && Math.abs(number) < 10_000;

/** A range of SI values in a unit, {low, high, unit} for a sentence. */
export function range(lowSi, highSi, unit) {
  const text = si => plain((si - unit.offsetSi) / unit.toSi);
  return { low: text(lowSi), high: text(highSi), unit: symbolOf(unit) };
}

function digits(amount, unit) {
  const step = amount.resolutionSi / unit.toSi;
  const decimals = Math.min(9, Math.max(0, -Math.floor(Math.log10(step) + 1e-6)));
  return fixed((amount.valueSi - unit.offsetSi) / unit.toSi, decimals).replaceAll(GROUP, '\u202f');
}
