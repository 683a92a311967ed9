/** Judges an amount against a field of the catalogue; the ranges come from there and are never typed again here. */

const FAR = 2;

/**
 * @param field {possibleLowSi, possibleHighSi, usualLowSi, usualHighSi, units}
 * @param amount {valueSi, unit}
 * @param units the catalogue's units
 * @returns {verdict: 'fine' | 'unusual' | 'impossible', likely: unit in which the digits would be usual, or null}
 */
export function judge(field, amount, units) {
  const verdict = verdictOf(field, amount.valueSi);
  return { verdict, likely: isFarOut(field, amount.valueSi) ? likelyUnit(field, amount, units) : null };
}

/** Drops readings of an ambiguous number that cannot be; 1,234 beside V is 1.234 V, since no cell has 1234 V. */
export function settle(field, understanding) {
  if (understanding.kind !== 'ambiguous') return understanding;
  const possible = understanding.amounts.filter(amount => verdictOf(field, amount.valueSi) !== 'impossible');
  return possible.length === 1 ? { kind: 'understood', amounts: possible } : understanding;
}

function verdictOf(field, valueSi) {
  if (field.usualLowSi <= valueSi && valueSi <= field.usualHighSi) return 'fine';
  return field.possibleLowSi <= valueSi && valueSi <= field.possibleHighSi ? 'unusual' : 'impossible';
}

/** Just outside of the usual range lies a rare cell; a slip of a prefix lies far outside. */
function isFarOut({ usualLowSi, usualHighSi }, valueSi) {
  const low = usualLowSi > 0 ? usualLowSi / FAR : usualLowSi * FAR;
  return valueSi < usualLowSi && valueSi <= low || valueSi > usualHighSi && valueSi >= usualHighSi * FAR;
}

/** Of the units in which the digits would be usual, the one nearest to what was typed: a slip is by one prefix. */
function likelyUnit(field, amount, units) {
  const typed = units.find(unit => unit.key === amount.unit);
  const digits = (amount.valueSi - typed.offsetSi) / typed.toSi;
  const distance = unit => Math.abs(Math.log(typed.toSi / unit.toSi));
  const [nearest = null] = field.units.map(key => units.find(unit => unit.key === key))
    .filter(unit => unit && unit.key !== typed.key && unit.quantity === typed.quantity)
    .filter(unit => verdictOf(field, digits * unit.toSi + unit.offsetSi) === 'fine')
    .sort((a, b) => distance(a) - distance(b));
  return nearest;
}
