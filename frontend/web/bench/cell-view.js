/** One cell: its next step with its caution, the stages so far, its readings, its result and its recipe. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { slotPanel } from '../lesson/slot.js';
import { teamTimers } from '../lesson/team-timers.js';
import { checklist } from './checklist.js';
import { closedNotice } from './closed.js';
import { curve } from './curve.js';
import { history } from './history.js';
import { nowPanel } from './now-panel.js';
import { otherwiseThanPlanned } from './planned.js';
import { nextStep, stagesOf, statesByStage } from './progress.js';
import { recipeList } from './recipe-list.js';
import { result } from './result.js';
import { to } from './routes.js';
import { correctedWords, place, readingWords, setAsideReason } from './words.js';

const KINDS = ['dark', 'light', 'sweep', 'toggles'];
const IN_ROWS = ['sweep', 'toggles'];

export function cellView(data, outbox, id) {
  const cell = data.cell(id);
  if (!cell) return html`<div class="flow">${back()}<p>${t('page.bench.noSuchCell')}</p></div>`;
  const readings = data.readings(id);
  const stages = stagesOf(cell, readings, data.catalogue);
  const next = nextStep(stages, readings);
  const measuring = next.kind === 'stage' ? readings.length > 0 : next.kind !== 'failed';
  return html`<div class="cell-view">
    <div class="flow">
      ${back()}
      <div class="cell-head"><h1>${t('page.bench.cell', { label: cell.label })}</h1>
        <bw-cell .stages=${statesByStage(stages)}></bw-cell></div>
      ${closedNotice(data)}
      ${cell.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}
      ${otherwiseThanPlanned(data, cell.id)}
      ${slotPanel(data, outbox, id)}
      ${teamTimers(data, id)}
      ${nowPanel(cell, next, data)}
      ${measuring ? readingSection(cell, readings, data.catalogue.units) : nothing}
    </div>
    <div class="flow">
      ${measuring ? html`${checklist(cell, readings, data.result(id))}${result(data.result(id))}${teamPlace(data)}` : nothing}
      <section class="flow"><h2>${t('page.bench.stages')}</h2><ol class="bare stages">${stages.map(stage => html`${stageRow(cell, stage)}${stage.key === 'fill' ? cell.events.map(eventRow) : nothing}`)}</ol>
        ${isFilled(stages) ? html`<a class="button plain" href=${to('work', cell.id)}>${t('page.bench.workRecord')}</a>` : nothing}</section>
      ${!measuring && (next.kind === 'stage' || readings.length) ? readingSection(cell, readings, data.catalogue.units) : nothing}
      <details class="fold"><summary>${t('page.bench.recipe')}</summary>${recipeList(cell, data.catalogue)}
        <a class="button quiet" href=${to('sheet', cell.id)}>${t('page.bench.editRecipe')}</a></details>
      ${history(cell, data.allReadings(id), data.catalogue.units)}
    </div>
  </div>`;
}

function teamPlace({ standing, leaderboard }) {
  return standing?.place
    ? html`<p class="soft">${t('page.bench.teamPlace', { place: place(standing.place), teams: leaderboard.teams.length })}</p>` : nothing;
}

export const back = (...parts) => html`<a class="back" href=${parts.length ? to(...parts) : '#'}><bw-icon name="back"></bw-icon>
  ${parts.length ? t('page.bench.backToCell') : t('page.bench.backToBench')}</a>`;

function stageRow(cell, stage) {
  const { outcome } = stage;
  const words = outcome ? (outcome.passed ? t('page.bench.worked') : failureWords(outcome)) : t(`page.bench.stageState.${stage.state}`);
  return html`<li class="stage ${stage.state}">
    <bw-icon name=${{ passed: 'fine', failed: 'impossible', next: 'next' }[stage.state] ?? 'waiting'}></bw-icon>
    <div><strong>${t(`catalogue.stage.${stage.key}`)}</strong>
      <p class="soft small">${words}${outcome?.acceptedAt ? ` · ${clock(outcome.acceptedAt)}` : ''}
        ${outcome?.pending ? html`· ${t('page.bench.onThisPhone')}` : nothing}${outcome?.note ? html`<br>${t('page.quoted', { words: outcome.note })}` : nothing}</p></div>
    ${stage.state === 'open' ? nothing : html`<a class="button plain" href=${to('outcome', cell.id, stage.key)}
      aria-label=${t(outcome ? 'page.bench.correctStage' : 'page.bench.recordStage', { stage: t(`catalogue.stage.${stage.key}`) })}>
      ${t(outcome ? 'page.bench.correct' : 'page.bench.record')}</a>`}</li>`;
}

const isFilled = stages => stages.some(({ key, state }) => key === 'fill' && state === 'passed');

const eventRow = ({ kind, note, acceptedAt, pending }) => html`<li class="stage passed event">
  <bw-icon name="again"></bw-icon>
  <div><strong>${t(`page.bench.work.${kind}`)}</strong>
    <p class="soft small">${acceptedAt ? clock(acceptedAt) : nothing}${pending ? t('page.bench.onThisPhone') : nothing}${note ? html`<br>${t('page.quoted', { words: note })}` : nothing}</p></div></li>`;

const failureWords = outcome => (outcome.failure ? t(`catalogue.failure.${outcome.failure}`) : t('page.bench.failed'));

const readingSection = (cell, readings, units) => html`<section class="flow"><h2>${t('page.bench.readings')}</h2>
  <ul class="bare readings">${KINDS.map(kind => readingRow(cell, kind, readings.filter(each => each.kind === kind), units))}</ul>
  ${curve(readings.filter(each => each.kind === 'sweep' && !each.pending).at(-1)?.points ?? [])}
  ${mends(cell, readings)}
  ${settling(cell, readings.filter(({ kind, acceptedAt }) => kind === 'light' && acceptedAt))}</section>`;

/** Sweeps and toggles whose numbers can be mended, each with its time. */
function mends(cell, readings) {
  return readings.filter(each => IN_ROWS.includes(each.kind) && !each.pending && !setAsideReason(each)).map(each => html`<p><a class="button plain" href=${to(each.kind, cell.id, each.id)}>
    ${t(`page.bench.mend.${each.kind}`, { time: clock(each.readAt) })}</a></p>`);
}

/** The mark changes with each light reading that the server has and with each refill. */
const settling = ({ id, events }, lit) => (lit.length < 2 ? nothing
  : html`<bw-settling .cellId=${id} .mark=${[...lit, ...events].map(each => each.id).join()}></bw-settling>`);

function readingRow(cell, kind, readings, units) {
  const latest = readings.at(-1);
  return html`<li><a class="reading" href=${to(kind, cell.id)}><bw-icon name=${kind}></bw-icon>
    <span><strong>${t(`page.bench.reading.${kind}`)}</strong>
      <span class="soft small">${latest ? readingWords(latest, units) : t('page.bench.notYet')}</span>
      ${latest && setAsideReason(latest) ? html`<span class="small">${t('page.bench.setAside', { reason: setAsideReason(latest) })}</span>` : nothing}
      ${latest && correctedWords(latest) ? html`<span class="soft small">${correctedWords(latest)}</span>` : nothing}
      ${latest?.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}</span>
    <bw-icon name=${latest ? 'next' : 'add'}></bw-icon></a></li>`;
}
