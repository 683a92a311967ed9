import { remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { toCell } from './route.js';
import { whereIs } from './whereabouts.js';

/**
 * Every cell in the column of the stage it is at: where it failed, the first stage not yet passed, or the last column
 * when it counts. A cell that is on the attention list carries a mark; one that waits says why when it is pointed at.
 */
export function stageTable({ day, teams, cells, catalogue, attention, standings }) {
  const stages = catalogue.stages.map(({ key }) => key);
  if (teams.length === 0) return nothing;
  const wanted = new Set(attention.items.filter(item => !item.putOffUntil).map(item => item.cellId));
  const view = { day, stages, standings, wanted };
  return html`<section aria-labelledby="stages-title"><h2 id="stages-title" class="unseen">${t('page.desk.stages')}</h2>
    <table class="stages">
      <thead><tr><th scope="col">${t('page.desk.team')}</th>
        ${stages.map(stage => html`<th scope="col">${t(`catalogue.stage.${stage}`)}</th>`)}
        <th scope="col">${t('page.desk.counts')}</th></tr></thead>
      <tbody>${teams.map(team => teamRow(team, cells.filter(cell => cell.teamId === team.id), view))}</tbody>
    </table>
    <p class="key">${['building', 'waits', 'unranked', 'counts', 'failed'].map(state => html`
      <span><span class="chip ${state}" aria-hidden="true">${state === 'failed' ? 'A1' : ''}</span> ${t(`page.desk.state.${state}`)}</span>`)}
      <span><span class="wants" aria-hidden="true">!</span> ${t('page.desk.onTheList')}</span></p></section>`;
}

function teamRow(team, cells, view) {
  const placed = cells.map(cell => ({ cell, ...whereIs(cell, view.stages, view.standings.get(cell.id)) }));
  const columns = [...view.stages, 'counts'];
  return html`<tr><th scope="row"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</th>
    ${cells.length === 0 ? html`<td class="none soft" colspan=${columns.length}>${t('page.desk.noCell')}</td>` : columns.map(column => html`
      <td class=${placed.some(({ at }) => at === column) ? nothing : 'empty'}>${placed.filter(({ at }) => at === column).map(place => chip(place, view))}</td>`)}
  </tr>`;
}

function chip({ cell, at, state }, { day, wanted, standings }) {
  const stage = at === 'counts' ? t('page.desk.counts') : t(`catalogue.stage.${at}`);
  return html`<a class="chip ${state}" href=${toCell(day.id, cell.id)} title=${why(state, standings.get(cell.id))}>${cell.label}
    <span class="at">${stage}</span><span class="unseen">${t(`page.desk.state.${state}`)}</span>
    ${wanted.has(cell.id) ? html`<span class="wants" aria-hidden="true">!</span><span class="unseen">${t('page.desk.onTheList')}</span>` : nothing}</a>`;
}

/** In the words of the Bench, where something is missing. */
function why(state, standing) {
  const words = t(`page.desk.state.${state}`);
  return ['waits', 'unranked'].includes(state) && standing?.remark ? t('page.desk.stateWhy', { state: words, why: remark(standing.remark) }) : words;
}
