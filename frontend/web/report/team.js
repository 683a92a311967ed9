import { currentDensityTexts, figureTexts, powerDensityTexts, voltageTexts } from '../core/format.js';
import { placeOf } from '../core/place.js';
import { rankedTexts } from '../core/ranked.js';
import { remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import './comment.js';
import { curves } from './curves.js';
import { recipes } from './recipes.js';
import { records } from './records.js';

const FIGURES = [
  ['power', 'powerDensityWm2', powerDensityTexts], ['voc', 'openCircuitVoltageV', voltageTexts],
  ['jsc', 'currentDensityAm2', currentDensityTexts], ['ff', 'fillFactor', figure => figureTexts(figure, 1, '')],
];

/** A team's own page. `team` is its standing, `page` what the report says of it. */
export function teamPage(team, page, { day, board, cells, catalogue, saved }) {
  const own = cells.filter(({ teamId }) => teamId === team.teamId);
  return html`<article class="team flow" data-team=${team.teamId}>
    <header class="apart"><h2><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</h2><span class="soft">${day.title}</span></header>
    <p class="stands">${stands(team, board)}</p>
    ${page.cells.length === 0 ? html`<p>${t('page.report.noCells')}</p>` : html`${results(page.cells)}
      <div class="twins">${curves(page.cells, team.name)}${records(page)}</div>${recipes(own, catalogue)}`}
    <bw-team-comment class="kept" .team=${team} .comment=${page.comment} @saved=${saved}></bw-team-comment>
  </article>`;
}

function stands(team, { teams, metric }) {
  if (!team.figure) return team.remark ? remark(team.remark) : t('page.report.noResult');
  return t('page.report.stands', { place: placeOf(team), teams: teams.filter(({ place }) => place != null).length, metric: `catalogue.metric.${metric}`, ...rankedTexts(team.figure) });
}

function results(cells) {
  return html`<table class="results"><thead><tr><th scope="col">${t('page.report.cell')}</th>
      ${FIGURES.map(([key]) => html`<th scope="col" class="number">${t(`page.report.figure.${key}`)}</th>`)}</tr></thead>
    <tbody>${cells.map(cell => html`<tr><th scope="row">${cell.label}</th>
      ${cell.standing === 'counts' ? FIGURES.map(([key, name, texts]) => html`<td class="number" data-name=${t(`page.report.figure.${key}`)}>${figure(cell[name], texts)}</td>`)
        : html`<td colspan="4" class="soft">${cell.remark ? remark(cell.remark) : t('page.report.noResult')}</td>`}</tr>
      ${cell.standing === 'counts' && cell.notes.length ? html`<tr class="of-cell"><td></td><td colspan="4" class="soft small">${cell.notes.map(remark).join(' ')}</td></tr>` : nothing}`)}</tbody></table>`;
}

function figure(value, texts) {
  if (!value) return '–';
  const { value: shown, low, high, unit } = texts(value);
  return html`<strong>${shown}</strong> ${unit} <br><span class="soft small">${t('page.bench.lowToHigh', { low, high })}</span>`;
}
