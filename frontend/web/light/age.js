import { clock, dateHere, day } from '../core/format.js';
import { t } from '../core/texts.js';

const MINUTE_MS = 60_000;
const SAME_DAY_MIN = 12 * 60;

/**
 * How old a station's newest reading is and what to do: { tone, words }. Daylight and lamps differ in how long a reading
 * holds; the server says for how long.
 */
export function ageOf(readAt, staleAfterMinutes, now) {
  const minutes = Math.max(0, Math.round((now - Date.parse(readAt)) / MINUTE_MS));
  if (minutes > SAME_DAY_MIN) return { tone: 'unusual', words: t('page.light.old', { day: day(dateHere(readAt)) }) };
  if (minutes > staleAfterMinutes) return { tone: 'unusual', words: t('page.light.stale', { minutes }) };
  const until = clock(Date.parse(readAt) + staleAfterMinutes * MINUTE_MS);
  const words = minutes < 1 ? t('page.light.justNow', { until }) : t('page.light.age', { minutes, until });
  return { tone: 'fine', words };
}
