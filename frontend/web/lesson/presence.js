/** Tells the server what this phone still holds, so that the teacher sees who is cut off. Never waits for an answer. */

import { remember, remembered } from '../core/drafts.js';
import { newId } from '../core/ids.js';

const EVERY_MS = 30_000;
const MOST_CODES = 20;
const MOST_WAITING = 9_999;

/** What to tell of an outbox: {waiting, refusedCodes}. */
export function presenceOf(entries) {
  const refused = entries.filter(({ state }) => state === 'refused');
  return {
    waiting: Math.min(MOST_WAITING, entries.length - refused.length),
    refusedCodes: refused.map(({ problem }) => problem?.code).filter(Boolean).slice(0, MOST_CODES),
  };
}

/**
 * Tells at once, every half minute, and when something else is to be told. What fails is told again the next time.
 *
 * @param outbox {entries} with `changed` events
 * @param {{put: (path: string, body: object) => Promise, every: (ms: number, task: () => void) => void, phoneId: string}} ways
 */
export function tellPresence(outbox, { put, every, phoneId }) {
  let told = '';
  let telling = false;

  async function tell() {
    if (telling) return;
    telling = true;
    const presence = presenceOf(outbox.entries);
    told = JSON.stringify(presence);
    await put(`/api/phones/${phoneId}`, presence).catch(() => {});
    telling = false;
    ifOther();
  }

  function ifOther() {
    if (JSON.stringify(presenceOf(outbox.entries)) !== told) tell();
  }

  outbox.addEventListener('changed', ifOther);
  every(EVERY_MS, tell);
  return tell();
}

/** The id under which this phone is known, the same after a reload. */
export function phoneId() {
  const id = remembered('phone', null) ?? newId();
  remember('phone', id);
  return id;
}
