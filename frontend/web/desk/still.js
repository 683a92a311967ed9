/**
 * A list that stands still while somebody points at it or has the focus in it: nothing moves under the hand. What is gone
 * stays where it was, marked; what is new waits to be shown.
 */

/**
 * @param {object[]} shown items as they stand now, each with an `id`
 * @param {object[]} newest items as they should stand
 * @param {boolean} held whether somebody points at the list
 * @returns {{items: object[], waiting: number}} items to show, those gone with `gone: true`; how many new ones wait
 */
export function settle(shown, newest, held) {
  if (!held) return { items: newest, waiting: 0 };
  const byId = new Map(newest.map(item => [item.id, item]));
  const known = new Set(shown.map(({ id }) => id));
  return {
    items: shown.map(item => byId.get(item.id) ?? { ...item, gone: true }),
    waiting: newest.filter(({ id }) => !known.has(id)).length,
  };
}
