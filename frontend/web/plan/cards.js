/** Bench cards: one sheet for each team, with the way in and a paper fallback for the day the Wi-Fi fails. */
import { day as dateWords } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { levelWords, parameterName, teamName } from './names.js';

const STAGES = ['film', 'bake', 'dye', 'counterElectrode', 'fill'];
const SWEEP_POINTS = 9;

export function cards({ cells }, { day, teams, catalogue }) {
  const numbers = [...new Set(cells.map(({ team }) => team))];
  return html`<section class="cards print-cards">${numbers.map(number => card(number, cells, { day, teams, catalogue }))}</section>`;
}

function card(number, cells, { day, teams, catalogue }) {
  const own = cells.filter(({ team }) => team === number);
  const team = teams.find(({ id }) => id === own[0].teamId);
  return html`<article class="bench-card">
    <header><div><h2>${teamName(number, cells)}</h2><p>${day.title} · ${dateWords(day.date)}</p><p class="small">${t('page.plan.cardLead')}</p></div>
      ${number === 0 ? '' : html`<figure><img src=${team ? `/api/teams/${team.id}/link.svg` : `/api/labdays/${day.id}/link.svg`} alt=${t('page.bench.qr')} width="96" height="96">
        <figcaption>${team?.code ?? day.code ?? ''}</figcaption></figure>`}</header>
    ${own.map(cell => paper(cell, catalogue))}
  </article>`;
}

function paper({ label, kind, recipe }, catalogue) {
  return html`<section class="paper"><header><h3>${label}${kind === 'planned' ? '' : ` · ${t(`page.plan.kind.${kind}`)}`}</h3>
    <p>${recipe.map(value => html`<span class="given"><b>${parameterName(value.parameter)}</b> ${levelWords(value, catalogue)}</span>`)}</p></header>
    <table><thead><tr>${STAGES.map(stage => html`<th>${t(`catalogue.stage.${stage}`)}</th>`)}<th>${t('page.plan.dark')}</th><th>${t('page.plan.lit')}</th></tr></thead>
      <tbody><tr>${STAGES.map(() => html`<td>☐ ${t('page.plan.ok')}<br>☐ ${t('page.plan.notOk')}</td>`)}<td>mV<br>µA</td><td>mV<br>µA</td></tr></tbody></table>
    <p class="small blanks">${['area', 'station', 'light', 'time'].map(what => html`<span>${t(`page.plan.blank.${what}`)}</span>`)}</p>
    <table class="sweep"><tbody>${['mV', 'µA'].map((unit, row) => html`<tr>${row === 0 ? html`<th rowspan="2">${t('page.plan.blank.sweep')}</th>` : ''}<th>${unit}</th>${Array.from({ length: SWEEP_POINTS }, () => html`<td></td>`)}</tr>`)}</tbody></table>
    <p class="small">${t('page.plan.otherwise')}</p></section>`;
}
