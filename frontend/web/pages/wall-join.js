import { get } from '../core/http.js';

/**
 * How a phone joins: the address to open and, where a teacher's browser shows the Wall and the day lets teams create
 * themselves, the day's code and its picture.
 */
export async function joinHint(labDayId) {
  const [addresses, day] = await Promise.all([orNull('/api/addresses'), orNull(`/api/labdays/${labDayId}`)]);
  const base = addresses?.[0] ?? location.origin;
  const code = day?.teamsCreateThemselves && day.entryOpen ? day.code : null;
  return { address: base.replace(/^https?:\/\//, ''), code, picture: `/api/labdays/${labDayId}/link.svg` };
}

async function orNull(path) {
  try {
    return await get(path);
  } catch {
    return null; // a projector without a sign-in may not see the code; the Wall shows what it may
  }
}
