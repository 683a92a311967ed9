/** Axis ranges that a reader can do sums with, and that stay put while the dots move. */

/** Of an axis that stays: how much must be filled, and what is left free when it is drawn anew. */
const LEAST_FILLED = 0.4;
const ROOM_ABOVE = 1.08;

const STEPS = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];

/** The smallest round number that is not below `value`, for `value` above 0. */
export function roundUp(value) {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = STEPS.find(candidate => candidate * decade >= value * (1 - 1e-9));
  return step * decade;
}

/** A range from zero that holds `high`; an earlier range is kept for as long as it holds it too. */
export function rangeFromZero(high, earlier) {
  if (earlier && high <= earlier.max) return earlier;
  return { min: 0, max: high > 0 ? roundUp(high) : 1 };
}

/** A range from zero that stays while `high` fills a fair part of it, so that a curve moves and its axis does not. */
export function steadyRange(high, earlier) {
  const fits = earlier && high <= earlier.max && high >= earlier.max * LEAST_FILLED;
  return fits ? earlier : rangeFromZero(high * ROOM_ABOVE);
}

/** Whole decades, or their halves, round positive values, with room for a mark at either end. */
export function rangeInDecades(values) {
  if (values.length === 0) return { min: 1, max: 10 };
  const low = Math.min(...values) / 1.3;
  const high = Math.max(...values) * 1.3;
  return { min: floorInDecade(low), max: roundUp(high) };
}

/**
 * A range with a tenth of its span to spare on both sides. It spans at least `leastShare` of the middle value, so that
 * a change too small to matter looks small.
 */
export function rangeAround(values, leastShare = 0) {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const middle = (low + high) / 2;
  const half = Math.max(high - low, Math.abs(middle) * leastShare, Number.EPSILON) * 0.6;
  return { min: middle - half, max: middle + half };
}

/** Ticks of a logarithmic axis: 1, 2 and 5 of every decade, or the decades alone where there are many. */
export function isLogTick(value, { min, max }) {
  const leading = value / 10 ** Math.floor(Math.log10(value) + 1e-9);
  const wanted = max / min > 300 ? [1] : [1, 2, 5];
  return wanted.some(digit => Math.abs(leading - digit) < 1e-6);
}

function floorInDecade(value) {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = STEPS.findLast(candidate => candidate * decade <= value * (1 + 1e-9));
  return step * decade;
}
