/** Which resistor to take next: about Voc/Isc first, then the values of the E6 series round the best point so far. */

const E6 = [10, 15, 22, 33, 47, 68];
const DECADES = [1, 10, 100, 1_000, 10_000];

/** 10 Ω to 1 MΩ, the range of a school's resistor box (common practice, no source). */
const RESISTORS = [...DECADES.flatMap(decade => E6.map(value => value * decade)), 1_000_000];

/** Half-decade steps find the peak, E6 steps draw it. */
const FIRST_STEPS = RESISTORS.filter(ohm => /^(1|33)0*$/.test(String(ohm)));
const FIRST_POINTS = 5;
const UNKNOWN_CELL_OHM = 1_000;
const SAME = Math.log(1.15);
const ROUND_THE_PEAK = Math.log(5);

/** Enough to trust a peak: so many points, and so many of them near its power (common practice, no source). */
const ENOUGH = 10;
const NEAR_PEAK = 4;
const NEAR_POWER = 0.7;

/**
 * @param points [{ohm, voltageV, currentA}] read so far
 * @param guessOhm Voc/Isc of a light reading, or null
 * @returns the resistor in ohms, or null when there are points enough
 */
export function nextLoad(points, guessOhm) {
  if (isEnough(points)) return null;
  const best = bestPoint(points)?.ohm;
  const centre = points.length < FIRST_POINTS ? guessOhm ?? best ?? UNKNOWN_CELL_OHM : best ?? guessOhm ?? UNKNOWN_CELL_OHM;
  if (points.length < FIRST_POINTS) return nearest(free(FIRST_STEPS, points), centre);
  return nearest(free(RESISTORS, points).filter(ohm => apart(ohm, centre) <= ROUND_THE_PEAK), centre)
    ?? nearest(free(FIRST_STEPS, points), centre);
}

export function isEnough(points) {
  return points.length >= ENOUGH && nearPeak(points) >= NEAR_PEAK;
}

/** How many points give at least 70 % of the best power so far. */
export function nearPeak(points) {
  const best = bestPoint(points);
  return best ? points.filter(point => power(point) >= NEAR_POWER * power(best)).length : 0;
}

const power = ({ voltageV, currentA }) => voltageV * currentA;

function bestPoint(points) {
  const [best] = points.filter(point => power(point) > 0 && point.ohm > 0).sort((a, b) => power(b) - power(a));
  return best;
}

const free = (resistors, points) => resistors.filter(ohm => !points.some(point => apart(point.ohm, ohm) < SAME));

const nearest = (resistors, ohm) => [...resistors].sort((a, b) => apart(a, ohm) - apart(b, ohm))[0] ?? null;

const apart = (a, b) => Math.abs(Math.log(a / b));
