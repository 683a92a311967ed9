import { serverClock } from '../core/clock.js';
import { dateHere, day as dateWords } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const NEAR_DAYS = 14;
const DAY_MS = 86_400_000;

/** How the date until which a day is kept stands to today: `none`, `far`, `near` or `over`. */
export function standing(keepUntil, today = dateHere(serverClock.now())) {
  if (!keepUntil) return 'none';
  const left = Math.round((Date.parse(keepUntil) - Date.parse(today)) / DAY_MS);
  return left < 0 ? 'over' : left <= NEAR_DAYS ? 'near' : 'far';
}

/** The date until which a day is kept; one that is near or over asks for the teacher. */
export function kept({ id, keepUntil }) {
  const stands = standing(keepUntil);
  if (stands === 'none') return nothing;
  const words = t(`page.days.kept.${stands}`, { date: dateWords(keepUntil) });
  return stands === 'far' ? html`<span class="soft small">${words}</span>`
    : html`<a class="tag unusual" href="/data.html#${id}"><bw-icon name="unusual"></bw-icon>${words}</a>`;
}
