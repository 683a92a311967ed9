/** How a team stands towards a hazard zone. Pure functions; times in ms of the server's clock. */

/**
 * The sign-off that matters: the valid one that holds longest, else the one that ended last.
 * @param signOffs [{teamId, zone, reason, validUntil, withdrawnAt}]
 * @returns {state: 'valid' | 'ended' | 'withdrawn' | 'none', until: ms or null, reason, id}
 */
export function standingOf(signOffs, teamId, zone, now) {
  const latest = signOffs.filter(each => each.teamId === teamId && each.zone === zone).map(each => withEnd(each, now))
    .reduce((best, each) => (best && best.until > each.until ? best : each), null);
  return latest ?? { state: 'none', until: null, reason: null, id: null };
}

function withEnd({ id, reason, validUntil, withdrawnAt }, now) {
  const end = Date.parse(validUntil);
  const withdrawn = withdrawnAt ? Date.parse(withdrawnAt) : Infinity;
  const until = Math.min(end, withdrawn);
  const state = until > now ? 'valid' : withdrawn < end ? 'withdrawn' : 'ended';
  return { state, until, reason, id };
}

/** Whole minutes left, at least 1 while there is any time. */
export const minutesLeft = (until, now) => Math.max(0, Math.ceil((until - now) / 60_000));

/**
 * Minutes from now to a time of the day, "15:40"; after midnight when it is past. NaN when it is no time.
 * @param now a Date
 */
export function minutesUntil(time, now) {
  const [hours, minutes] = /^\d{1,2}:\d{2}$/.test(time) ? time.split(':').map(Number) : [NaN, NaN];
  const end = new Date(now).setHours(hours, minutes, 0, 0);
  const left = Math.round((end - now) / 60_000);
  return left > 0 ? left : left + 1440;
}

/** A time of the day so many minutes from now, on the next five minutes: "15:40". */
export function timeAfter(minutes, now) {
  const end = new Date(Math.ceil((now.getTime() + minutes * 60_000) / 300_000) * 300_000);
  return `${String(end.getHours()).padStart(2, '0')}:${String(end.getMinutes()).padStart(2, '0')}`;
}
