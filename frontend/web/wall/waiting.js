import { remark, t } from '../core/texts.js';
import { html } from '../kit/element.js';

/** Cells that are finished and do not count yet, each with what it takes, and cells that broke, each with what happened. */
export function waitingBoard(cells) {
  return html`<section class="leaf waiting" aria-labelledby="waiting-title">
    <h2 id="waiting-title">${t('page.wall.notRanked')}</h2>
    <ul>${cells.map(cell => html`<li>
      <span class="which">${cell.labels.join(', ')}</span>
      <span class="name"><bw-mark .mark=${cell.team.mark}></bw-mark><span>${cell.team.name}</span></span>
      <span class="need">${remark(cell.remark)}</span></li>`)}</ul>
  </section>`;
}
