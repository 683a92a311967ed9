/** What becomes of an entry when sending it failed. */
import { Refused } from '../core/http.js';

const TRY_AGAIN = new Set([408, 425, 429]);
const OUTDATED = 'access.pageOutdated';

/** `retry` (silence, overload), `signIn` (401: nothing is wrong with the entry) or `keep` (the server said no to it). */
export function fateOf(error) {
  if (!(error instanceof Refused)) return 'retry';
  if (error.status === 401) return 'signIn';
  return error.status >= 500 || TRY_AGAIN.has(error.status) || error.code === OUTDATED ? 'retry' : 'keep';
}
