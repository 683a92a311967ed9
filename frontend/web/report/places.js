import { placeOf } from '../core/place.js';
import { rankedTexts, shown } from '../core/ranked.js';
import { remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { axis, bar, scaleOf } from './interval.js';

/** Every team with its place as a range, what it is ranked by, and the interval drawn on one scale. */
export function places({ teams, metric }) {
  const ranked = teams.filter(({ figure }) => figure);
  const scale = ranked.length ? scaleOf(ranked.map(({ figure }) => shown(figure))) : null;
  return html`<section class="flow"><h2>${t('page.report.places')}</h2>
    <p>${t('page.report.placesMeans', { metric: `catalogue.metric.${metric}` })}</p>
    <table class="places"><thead><tr><th scope="col">${t('page.report.place')}</th><th scope="col">${t('page.report.team')}</th>
      <th scope="col" class="number">${t(`catalogue.metric.${metric}`)}</th><th scope="col" class="drawn">${scale ? t('page.report.interval', { unit: rankedTexts(ranked[0].figure).unit }) : nothing}</th></tr></thead>
      <tbody>${teams.map(team => row(team, scale))}</tbody>
      ${scale ? html`<tfoot><tr><td></td><td></td><td></td><td class="drawn">${axis(scale)}</td></tr></tfoot>` : nothing}</table></section>`;
}

function row(team, scale) {
  return html`<tr><td class="place">${placeOf(team) ?? '–'}</td>
    <th scope="row"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</th>
    ${team.figure ? figure(team.figure, scale) : html`<td colspan="2" class="soft">${team.remark ? remark(team.remark) : t('page.report.noResult')}</td>`}</tr>`;
}

function figure(ranked, scale) {
  const { value, low, high, unit } = rankedTexts(ranked);
  return html`<td class="number"><strong>${value} ${unit}</strong> <span class="soft small">${t('page.bench.lowToHigh', { low, high })}</span></td>
    <td class="drawn">${bar(shown(ranked), scale)}</td>`;
}
