/** What becomes of an entry when sending it failed, and how long to wait before the next try. */
import { Refused } from '../core/http.js';

const LONGEST_MS = 30_000;
const TRY_AGAIN = new Set([408, 425, 429]);
const OUTDATED = 'access.pageOutdated';

/** `retry` (silence, overload), `signIn` (401: nothing is wrong with the entry) or `keep` (the server said no to it). */
export function fateOf(error) {
  if (!(error instanceof Refused)) return 'retry';
  if (error.status === 401) return 'signIn';
  return error.status >= 500 || TRY_AGAIN.has(error.status) || error.code === OUTDATED ? 'retry' : 'keep';
}

/** 1, 2, 4 … 30 s with full jitter, so that thirty phones do not return together. `random` in [0, 1). */
export const backoffMs = (tries, random) => Math.round(random * Math.min(LONGEST_MS, 1_000 * 2 ** (tries - 1)));
