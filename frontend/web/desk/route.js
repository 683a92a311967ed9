/** What the address names: the lab day, and perhaps one cell, team or panel of it. */

/** "#DAY/cell/ID" as {day, kind, id}; kind and id are null for the day alone. */
export function readRoute(hash) {
  const [day = '', kind = null, id = null] = hash.replace(/^#/, '').split('/');
  return { day, kind, id };
}

export const toDay = day => `#${day}`;
export const toCell = (day, id) => `#${day}/cell/${id}`;
export const toPanel = (day, key) => `#${day}/panel/${key}`;
