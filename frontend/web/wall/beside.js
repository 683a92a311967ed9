import { fixed } from '../core/format.js';
import { rankedTexts } from '../core/ranked.js';
import { t } from '../core/texts.js';
import { html } from '../kit/element.js';
import { honours } from './honours.js';

/** The boards beside the places, each with its first few teams. */
export function besideBoards(teams, metric) {
  return html`<section class="leaf honours" aria-label=${t('page.wall.beside')}>
    ${honours(teams, metric).map(honour)}
    <p class="caption">${t('page.wall.besideCaution')}</p>
  </section>`;
}

function honour({ key, rows, more }) {
  return html`<section class="honour"><h2>${t(`page.wall.honour.${key}`)}</h2>
    <p class="what">${t(`page.wall.honourWhat.${key}`)}</p>
    ${rows.length === 0 ? html`<p class="none">${t(`page.wall.honourNone.${key}`)}</p>` : html`
    <ol>${rows.map(({ team, figure }) => html`<li>
      <span class="name"><bw-mark .mark=${team.mark}></bw-mark><span>${team.name}</span></span>
      <span class="amount">${WORDS[key](figure)}</span></li>`)}</ol>
    ${more > 0 ? html`<p class="what">${t('page.wall.honourMore', { more })}</p>` : ''}`}
  </section>`;
}

/** How each board writes its figure. */
const WORDS = {
  verified: ({ label, ranked }) => html`<span class="soft">${label}</span> ${rankedTexts(ranked).value}
    <span class="soft">${rankedTexts(ranked).unit}</span>`,
  yield: ({ working, declared }) => t('page.wall.ofCells', { working, declared }),
  alike: ({ times }) => t('page.wall.times', { times: fixed(times, 1) }),
  retention: ({ label, share, hours }) => html`<span class="soft">${label}</span> ${t('page.wall.percent', { percent: fixed(100 * share, 0) })}
    <span class="soft">${t('page.wall.afterHours', { hours: Math.round(hours) })}</span>`,
};
