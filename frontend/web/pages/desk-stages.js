import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { whereIs } from './whereabouts.js';

/**
 * Every cell in the column of the stage it is at: where it failed, the first stage not yet passed, or the last column
 * when it counts.
 */
export function stageTable({ teams, cells, catalogue }, standings) {
  const stages = catalogue.stages.map(({ key }) => key);
  if (teams.length === 0) return nothing;
  return html`<section class="flow"><h2>${t('page.desk.stages')}</h2>
    <table class="stages">
      <thead><tr><th scope="col">${t('page.desk.team')}</th>
        ${stages.map(stage => html`<th scope="col">${t(`catalogue.stage.${stage}`)}</th>`)}
        <th scope="col">${t('page.desk.counts')}</th></tr></thead>
      <tbody>${teams.map(team => teamRow(team, cells.filter(cell => cell.teamId === team.id), stages, standings))}</tbody>
    </table>
    <p class="key">${['building', 'waits', 'counts', 'failed'].map(state => html`
      <span><span class="chip ${state}" aria-hidden="true">${state === 'failed' ? 'A1' : ''}</span> ${t(`page.desk.state.${state}`)}</span>`)}</p></section>`;
}

function teamRow(team, cells, stages, standings) {
  const placed = cells.map(cell => ({ cell, ...whereIs(cell, stages, standings.get(cell.id)) }));
  const columns = [...stages, 'counts'];
  return html`<tr><th scope="row"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</th>
    ${cells.length === 0 ? html`<td class="none soft" colspan=${columns.length}>${t('page.desk.noCell')}</td>` : columns.map(column => html`
      <td class=${placed.some(({ at }) => at === column) ? nothing : 'empty'}>${placed.filter(({ at }) => at === column).map(chip)}</td>`)}
  </tr>`;
}

function chip({ cell, at, state }) {
  const stage = at === 'counts' ? t('page.desk.counts') : t(`catalogue.stage.${at}`);
  return html`<span class="chip ${state}" title=${t(`page.desk.state.${state}`)}>${cell.label}
    <span class="at">${stage}</span><span class="unseen">${t(`page.desk.state.${state}`)}</span></span>`;
}
