/**
 * A picture that can be held still while people talk about it: what arrives meanwhile is counted and shown on release.
 *
 * @typedef {{shown: ?object, newest: ?object, waiting: number, held: boolean}} Hold
 */

/** @type {Hold} */
export const LET_GO = Object.freeze({ shown: null, newest: null, waiting: 0, held: false });

/** A new picture arrived; the same one again changes nothing. */
export function arrived(hold, picture) {
  if (picture === hold.newest) return hold;
  const mayShow = !hold.held || hold.shown === null;
  return mayShow
    ? { ...hold, shown: picture, newest: picture }
    : { ...hold, newest: picture, waiting: hold.waiting + 1 };
}

/** The pause control was pressed. */
export function toggled(hold) {
  return hold.held
    ? { shown: hold.newest, newest: hold.newest, waiting: 0, held: false }
    : { ...hold, held: true };
}
