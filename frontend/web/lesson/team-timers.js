/** The teacher's timers for one team or one of its cells, on the team's phone. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** Those of a cell; with `cellId` null those of the team and of all its cells. Nothing while there is none. */
export function teamTimers(data, cellId) {
  const timers = data.timers.filter(timer => !cellId || timer.cellId === cellId);
  return timers.length ? html`<ul class="bare team-timers" aria-label=${t('page.lesson.teamTimers')}>${timers.map(timer => line(timer, data.cell(timer.cellId)))}</ul>` : nothing;
}

const line = ({ words, endsAt }, cell) => html`<li><bw-icon name="waiting"></bw-icon>
  <bw-countdown .until=${endsAt} .label=${cell ? t('page.lesson.timerOf', { label: cell.label, words }) : words}></bw-countdown></li>`;
