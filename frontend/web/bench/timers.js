/**
 * Waiting times at the bench. The end is kept as a point in time by the server's clock, so that a reload, a locked phone and a
 * phone whose clock is wrong change nothing.
 */
import { serverClock } from '../core/clock.js';
import { remember, remembered } from '../core/drafts.js';

export { leftText } from '../core/countdown.js';

const MINUTE_MS = 60_000;

/** A filled cell is read again after this time (common practice, no source). */
const SETTLE_MINUTES = 10;

/** Stages that wait: the recipe's parameter for it, and usual minutes (common practice, no source). */
const WAITS = {
  film: { parameter: 'dryTime', minutes: [5, 10, 15] },
  bake: { parameter: 'bakeTime', minutes: [15, 30, 45] },
  dye: { parameter: 'soakTime', minutes: [10, 20, 30] },
};

const key = (cellId, stage) => `timer.${cellId}.${stage}`;

/** When the wait of a stage ends, in ms, or null while none was started. */
export const endOf = (cellId, stage) => remembered(key(cellId, stage), null);

export const startTimer = (cellId, stage, minutes, now = serverClock.now()) => remember(key(cellId, stage), now + minutes * MINUTE_MS);

export const stopTimer = (cellId, stage) => remember(key(cellId, stage), null);

/** Minutes to offer at a stage, the recipe's own first; none where nothing is waited for. */
export function minutesToOffer(cell, stage) {
  if (!WAITS[stage]) return [];
  const own = cell.recipe.find(({ parameter }) => parameter === WAITS[stage].parameter)?.number;
  const usual = WAITS[stage].minutes;
  return own > 0 ? [own, ...usual.filter(minutes => minutes !== own)].slice(0, usual.length) : usual;
}

/** When a filled cell is worth its first reading, in ms; null when it is not filled. */
export function settledFrom(cell) {
  const filled = [
    ...cell.outcomes.filter(({ stage, passed, replacedBy }) => stage === 'fill' && passed && !replacedBy),
    ...(cell.events ?? []).filter(({ kind }) => kind === 'refill'),
  ].map(({ acceptedAt, noticedAt }) => Date.parse(acceptedAt ?? noticedAt));
  return filled.length ? Math.max(...filled) + SETTLE_MINUTES * MINUTE_MS : null;
}

/** When the server wants a cell read again because it still settles, in ms, or null. */
export function comeBackAt(result, readings) {
  const remark = (result?.notes ?? []).find(({ key: name }) => name === 'standing.settling');
  const latest = readings.filter(({ kind, acceptedAt }) => kind === 'light' && acceptedAt).at(-1);
  return remark && latest ? Date.parse(latest.readAt) + remark.values.minutes * MINUTE_MS : null;
}
