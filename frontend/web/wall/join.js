import { get } from '../core/http.js';

/**
 * How a phone joins: the address to open and, where a teacher's browser shows the Wall and the day lets teams create
 * themselves, the day's code and its picture.
 */
export async function joinHint(labDayId) {
  const [addresses, who] = await Promise.all([orNull('/api/addresses'), orNull('/api/access')]);
  const day = who?.kind === 'teacher' ? await orNull(`/api/labdays/${labDayId}`) : null;
  const base = addresses?.[0] ?? location.origin;
  const code = day?.teamsCreateThemselves && day.entryOpen ? day.code : null;
  return { address: base.replace(/^https?:\/\//, ''), code, picture: `/api/labdays/${labDayId}/link.svg` };
}

async function orNull(path) {
  try {
    return await get(path);
  } catch {
    return null; // the hint is missing while the server is away; the Wall goes on without it
  }
}
