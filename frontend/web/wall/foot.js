import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/element.js';
import { isDark } from './theme.js';

/** The latest news or else how to join, which page of how many, pause and the switch between dark and light. */
export function wallFoot({ hold, news, join, pageNumber, pageCount, pause, turn, changeTheme }) {
  return html`<footer class="foot">
    ${news ? newsLine(news) : html`<p class="join">${join ? joinWords(join) : nothing}</p>`}
    ${pageCount > 1 ? pager(pageNumber, pageCount, turn) : nothing}
    <button class="control" aria-pressed=${hold.held} @click=${pause}>
      ${picture(hold.held ? PLAY : PAUSE)}${pauseWords(hold)}</button>
    <button class="control" @click=${changeTheme}>${picture(LAMP)}${t(isDark() ? 'page.wall.toLight' : 'page.wall.toDark')}</button>
  </footer>`;
}

function newsLine({ key, values }) {
  return html`<p class="news"><strong>${t('page.wall.news')}</strong> ${t(`page.wall.news.${key}`, values)}</p>`;
}

function joinWords({ address, code }) {
  return html`${t('page.wall.join')} <strong>${address}</strong>${code ? html` ${t('page.wall.code')} <strong>${code}</strong>` : nothing}`;
}

function pauseWords({ held, waiting }) {
  if (!held) return t('page.wall.pause');
  return waiting === 0 ? t('page.wall.paused') : t('page.wall.pausedWaiting', { count: waiting });
}

function pager(pageNumber, pageCount, turn) {
  return html`<span class="pager" role="group" aria-label=${t('page.wall.pages')}>
    <button class="control" aria-label=${t('page.wall.pageBack')} @click=${() => turn(-1)}>${picture(BACK)}</button>
    <span>${t('page.wall.page', { page: pageNumber + 1, count: pageCount })}</span>
    <button class="control" aria-label=${t('page.wall.pageOn')} @click=${() => turn(1)}>${picture(ON)}</button>
  </span>`;
}

const picture = path => html`<svg viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.5"
  stroke-linecap="round" stroke-linejoin="round">${path}</svg>`;

const PAUSE = svg`<path d="M8 5v14M16 5v14" stroke-width="4"/>`;
const PLAY = svg`<path d="M7 4.5v15l12-7.5z" fill="currentColor"/>`;
const BACK = svg`<path d="m14 5-7 7 7 7"/>`;
const ON = svg`<path d="m10 5 7 7-7 7"/>`;
const LAMP = svg`<circle cx="12" cy="12" r="8"/><path d="M12 4a8 8 0 0 1 0 16z" fill="currentColor"/>`;
