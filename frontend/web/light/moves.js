import { rankedTexts } from '../core/ranked.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** What a change would move, under the sentence that names it: places first, then cells whose shown result changes, each before and after. */
export function moves({ cells, teams }, lead) {
  const moved = cells.filter(({ before, after }) => result(before) !== result(after));
  const places = teams.filter(({ placeBefore, placeAfter }) => placeBefore !== placeAfter);
  return html`<p>${lead}</p>
    ${moved.length === 0 ? html`<p><strong>${t('page.light.nothingMoves')}</strong></p>` : nothing}
    ${places.length > 0 ? html`<ul class="bare moves">${places.map(placeMove)}</ul>` : nothing}
    ${moved.length > 0 && places.length === 0 ? html`<p><strong>${t('page.light.placesStay')}</strong></p>` : nothing}
    ${moved.length > 0 ? html`<table><caption class="unseen">${t('page.light.cellsMove')}</caption><thead><tr>
      <th scope="col">${t('page.light.cell')}</th><th scope="col" class="number">${t('page.light.before')}</th>
      <th scope="col" class="number">${t('page.light.after')}</th></tr></thead>
      <tbody>${moved.map(cellMove)}</tbody></table>
      <p class="small soft">${t('page.light.movesNotYet')}</p>` : nothing}`;
}

function placeMove({ name, placeBefore, placeAfter }) {
  return html`<li><strong>${name}</strong> ${t('page.light.placeMove', { before: place(placeBefore), after: place(placeAfter) })}</li>`;
}

const place = number => (number == null ? t('page.light.noPlace') : t('page.light.place', { number }));

function cellMove({ label, team, before, after }) {
  return html`<tr><th scope="row">${label} <span class="soft">${team}</span></th>
    <td class="number">${result(before)}</td><td class="number"><strong>${result(after)}</strong></td></tr>`;
}

const result = ({ standing, figure }) =>
  (figure ? words(rankedTexts(figure)) : t(`page.light.standing.${standing}`));

const words = ({ value, unit }) => `${value} ${unit}`;
