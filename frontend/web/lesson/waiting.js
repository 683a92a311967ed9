/** Stays on heaters as this phone knows them: what the server has, and over it what still waits here. Pure functions. */

const MINUTE_MS = 60_000;

/**
 * @param slots as the server gave them
 * @param entries of the outbox, in order: `heater` puts on or corrects, `heaterOut` takes off
 * @param coolDownMinutes from the server; null while it has not said, and then nothing becomes cool
 */
export function slotsWith(slots, entries, coolDownMinutes = null) {
  const put = entries.filter(({ about, state }) => about.kind === 'heater' && state === 'waiting').reduce(withPut, slots);
  return entries.filter(({ about }) => about.kind === 'heaterOut').reduce((all, entry) => withOut(all, entry, coolDownMinutes), put);
}

/** The server's stays with an acknowledged one among them. */
export const slotsWithAccepted = (slots, { body }, answer) => [...slots.filter(({ id }) => id !== answer.id && id !== body.replaces), answer];

function withPut(slots, { id, body, about }) {
  if (slots.some(slot => slot.id === id)) return slots;
  const earlier = slots.find(slot => slot.id === body.replaces);
  const inAt = body.inAt ?? earlier?.inAt;
  const holdUntil = new Date(Date.parse(inAt) + body.holdMinutes * MINUTE_MS).toISOString();
  const { cellId, heater, position, target, holdMinutes } = body;
  return [...slots.filter(slot => slot.id !== body.replaces), {
    id, cellId, label: about.label, heater, position, target, targetDegC: Number.parseFloat(target.text.replace(',', '.')),
    holdMinutes, inAt, holdUntil, outAt: earlier?.outAt ?? null, coolUntil: earlier?.coolUntil ?? null, pending: true,
  }];
}

function withOut(slots, { body }, coolDownMinutes) {
  return slots.map(slot => (slot.id !== body.slotId || slot.outAt ? slot
    : { ...slot, outAt: body.outAt, coolUntil: coolUntil(body.outAt, coolDownMinutes), pending: true }));
}

const coolUntil = (outAt, minutes) => (minutes === null ? null : new Date(Date.parse(outAt) + minutes * MINUTE_MS).toISOString());
