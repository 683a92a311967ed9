/** Judges an amount against a field of the catalogue; the ranges come from there and are never typed again here. */

/**
 * @param field {possibleLowSi, possibleHighSi, usualLowSi, usualHighSi, units}
 * @param amount {valueSi, unit}
 * @param units the catalogue's units
 * @returns {verdict: 'fine' | 'unusual' | 'impossible', likely: unit that would have been usual, or null}
 */
export function judge(field, amount, units) {
  const within = (low, high, value) => low <= value && value <= high;
  if (within(field.usualLowSi, field.usualHighSi, amount.valueSi)) return { verdict: 'fine', likely: null };
  const possible = within(field.possibleLowSi, field.possibleHighSi, amount.valueSi);
  return { verdict: possible ? 'unusual' : 'impossible', likely: likelySlip(field, amount, units, within) };
}

function likelySlip(field, amount, units, within) {
  const typed = units.find(unit => unit.key === amount.unit);
  const digits = (amount.valueSi - typed.offsetSi) / typed.toSi;
  return field.units.map(key => units.find(unit => unit.key === key))
    .filter(unit => unit && unit.key !== typed.key && unit.quantity === typed.quantity)
    .find(unit => within(field.usualLowSi, field.usualHighSi, digits * unit.toSi + unit.offsetSi)) ?? null;
}
