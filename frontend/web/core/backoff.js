const FIRST_MS = 1_000;
const LONGEST_MS = 30_000;

/**
 * How long to wait before try number `attempt` (0, 1, 2 ...): anywhere between nothing and 1, 2, 4 ... 30 s, so that a
 * whole class whose Wi-Fi came back does not return in the same instant.
 *
 * @param {number} attempt
 * @param {() => number} random in [0, 1)
 */
export function backoffMs(attempt, random) {
  return random() * Math.min(LONGEST_MS, FIRST_MS * 2 ** attempt);
}
