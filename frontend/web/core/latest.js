import { backoffMs } from './backoff.js';

/** A pause in the typing or sliding after which it is worth asking. */
const PAUSE_MS = 120;

/**
 * Asks for what was wanted last. It waits for a short pause, cancels the question that was overtaken, and hands out
 * the answer to the newest question only, in whatever order answers come. Where there is no answer it tries again.
 *
 * @param {object} parts
 * @param {(wanted: any, signal: AbortSignal) => Promise<any>} parts.ask
 * @param {(answer: any, wanted: any) => void} parts.answered
 * @param {(error: Error, wanted: any) => boolean} parts.failed whether it is worth trying again
 * @returns {{want: (wanted: any) => void, forget: () => void}}
 */
export function latest({ ask, answered, failed, later = setTimeout, never = clearTimeout, random = Math.random }) {
  let timer = null;
  let abort = null;

  function want(wanted) {
    forget();
    timer = later(() => start(wanted, 0), PAUSE_MS);
  }

  function forget() {
    never(timer);
    abort?.abort();
    abort = null;
  }

  async function start(wanted, attempt) {
    const mine = new AbortController();
    abort = mine;
    try {
      const answer = await ask(wanted, mine.signal);
      if (!mine.signal.aborted) answered(answer, wanted);
    } catch (error) {
      if (mine.signal.aborted || !failed(error, wanted)) return;
      timer = later(() => start(wanted, attempt + 1), PAUSE_MS + backoffMs(attempt, random));
    }
  }

  return { want, forget };
}
