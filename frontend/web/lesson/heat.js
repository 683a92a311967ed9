/** How cells on heaters stand, by the time alone; times in ms by the server's clock. Pure functions. */

/** A cell that was cool this long ago is no longer shown as taken out. */
const SHOWN_COOL_MS = 30 * 60_000;

/** `HEATING`, `HOLD_OVER` (time is up, still on the heater), `COOLING` (taken out, hot) or `TOUCHABLE` (after a check). */
export function heatState({ holdUntil, outAt, coolUntil }, now) {
  if (!outAt) return now < Date.parse(holdUntil) ? 'HEATING' : 'HOLD_OVER';
  return now >= Date.parse(coolUntil) ? 'TOUCHABLE' : 'COOLING'; // hot as long as nobody knows until when
}

/** The time that the state runs to, or was reached at; null when nobody knows. */
export const heatTime = ({ holdUntil, outAt, coolUntil }) => (outAt ? coolUntil : holdUntil);

/**
 * Cells on heaters by heater, each {heater, spots: [{position, slot | null, twice}]}. Where two cells are said to lie on one
 * position it stands twice.
 */
export function heatersOf(slots) {
  const byKey = new Map();
  for (const slot of slots) {
    const key = slot.heater.toLowerCase();
    byKey.set(key, [...(byKey.get(key) ?? []), slot]);
  }
  return [...byKey.values()].map(those => ({ heater: those[0].heater, spots: spotsOf(those) }))
    .sort((a, b) => a.heater.localeCompare(b.heater, 'en', { numeric: true }));
}

function spotsOf(slots) {
  const count = Math.max(...slots.map(({ position }) => position));
  return Array.from({ length: count }, (_, index) => spotsAt(index + 1, slots.filter(({ outAt, position }) => !outAt && position === index + 1))).flat();
}

const spotsAt = (position, on) => (on.length === 0 ? [{ position, slot: null, twice: false }]
  : on.map(slot => ({ position, slot, twice: on.length > 1 })));

/** Taken out and hot, or cool since not long ago, the hottest first. */
export const cooling = (slots, now) => slots
  .filter(({ outAt, coolUntil }) => outAt && !(now - Date.parse(coolUntil) >= SHOWN_COOL_MS))
  .sort((a, b) => Date.parse(b.coolUntil) - Date.parse(a.coolUntil));

/** The stay that counts for a cell now: on a heater, or taken out and not yet forgotten; null without one. */
export function slotOfCell(slots, cellId, now) {
  const own = slots.filter(slot => slot.cellId === cellId);
  return own.find(({ outAt }) => !outAt) ?? cooling(own, now)[0] ?? null;
}
