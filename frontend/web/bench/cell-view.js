/** One cell: its next step with its caution, the stages so far, its readings, its result and its recipe. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { advice } from './advice.js';
import { slotPanel } from '../lesson/slot.js';
import { caution } from './caution.js';
import { curve } from './curve.js';
import { howTo } from './how-to.js';
import { nextStep, stagesOf, statesByStage } from './progress.js';
import { recipeList } from './recipe-list.js';
import { result } from './result.js';
import { to } from './routes.js';
import { comeBackAt, settledFrom } from './timers.js';
import { readingWords, setAsideReason } from './words.js';

const KINDS = ['dark', 'light', 'sweep'];

export function cellView(data, id) {
  const cell = data.cell(id);
  if (!cell) return html`<div class="flow">${back()}<p>${t('page.bench.noSuchCell')}</p></div>`;
  const readings = data.readings(id);
  const stages = stagesOf(cell, readings, data.catalogue);
  const next = nextStep(stages, readings);
  const measuring = !['stage', 'failed'].includes(next.kind);
  return html`<div class="cell-view">
    <div class="flow">
      ${back()}
      <div class="cell-head"><h1>${t('page.bench.cell', { label: cell.label })}</h1>
        <bw-cell .stages=${statesByStage(stages)}></bw-cell></div>
      ${cell.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}
      ${slotPanel(data, id)}
      ${nowPanel(cell, next, data)}
      ${measuring ? readingSection(cell, readings, data.catalogue.units) : nothing}
    </div>
    <div class="flow">
      ${measuring ? result(data.result(id)) : nothing}
      <section class="flow"><h2>${t('page.bench.stages')}</h2><ol class="bare stages">${stages.map(stage => stageRow(cell, stage))}</ol></section>
      ${!measuring && (next.kind === 'stage' || readings.length) ? readingSection(cell, readings, data.catalogue.units) : nothing}
      <details class="fold"><summary>${t('page.bench.recipe')}</summary>${recipeList(cell, data.catalogue)}
        <a class="button quiet" href=${to('sheet', cell.id)}>${t('page.bench.editRecipe')}</a></details>
    </div>
  </div>`;
}

export const back = (...parts) => html`<a class="back" href=${parts.length ? to(...parts) : '#'}><bw-icon name="back"></bw-icon>
  ${parts.length ? t('page.bench.backToCell') : t('page.bench.backToBench')}</a>`;

function nowPanel(cell, { kind, stage }, data) {
  if (kind === 'failed') return ended(cell, stage);
  if (kind === 'done') return again(cell, comeBackAt(data.result(cell.id), data.readings(cell.id)));
  if (kind !== 'stage') return measureNow(cell, kind, stage);
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t(`catalogue.stage.${stage.key}`)}</h2>
    ${caution(stage, cell)}
    ${howTo(stage.key)}
    <bw-step-timer .cell=${cell} .stage=${stage.key}></bw-step-timer>
    ${stage.hot ? html`<p><a class="button quiet" href=${to('heater', cell.id)}>${t('page.lesson.putIn')}</a></p>` : nothing}
    <a class="button whole" href=${to('outcome', cell.id, stage.key)}>${t('page.bench.recordOutcome')}</a></section>`;
}

function measureNow(cell, kind, stage) {
  const settled = settledFrom(cell);
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t(`page.bench.reading.${kind}`)}</h2>
    ${settled > Date.now() ? html`<p><bw-time-left .until=${settled} .over=${t('page.bench.timeIsUp')}></bw-time-left></p>
      <p>${t('page.bench.settling', { time: clock(settled) })}</p>` : nothing}
    ${caution(stage, cell)}
    ${howTo(kind)}
    <a class="button whole" href=${to(kind, cell.id)}>${t(`page.bench.enter.${kind}`)}</a></section>`;
}

function again(cell, at) {
  if (!at) return nothing;
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t('page.bench.reading.light')}</h2>
    <p><bw-time-left .until=${at} .over=${t('page.bench.timeIsUp')}></bw-time-left></p>
    <p>${t('page.bench.comeBack', { time: clock(at) })}</p>
    <a class="button whole" href=${to('light', cell.id)}>${t('page.bench.readAgain')}</a></section>`;
}

function ended(cell, stage) {
  const { failure } = stage.outcome;
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t('page.bench.endedAt', { stage: t(`catalogue.stage.${stage.key}`) })}</h2>
    ${failure ? html`<p>${t(`catalogue.failure.${failure}`)}</p>${advice(failure)}` : nothing}
    <p class="small">${t('page.bench.failureCounts')}</p>
    <a class="button whole quiet" href=${to('outcome', cell.id, stage.key)}>${t('page.bench.doneAgain')}</a></section>`;
}

function stageRow(cell, stage) {
  const { outcome } = stage;
  const words = outcome ? (outcome.passed ? t('page.bench.worked') : failureWords(outcome)) : t(`page.bench.stageState.${stage.state}`);
  return html`<li class="stage ${stage.state}">
    <bw-icon name=${{ passed: 'fine', failed: 'impossible', next: 'next' }[stage.state] ?? 'waiting'}></bw-icon>
    <div><strong>${t(`catalogue.stage.${stage.key}`)}</strong>
      <p class="soft small">${words}${outcome?.acceptedAt ? ` · ${clock(outcome.acceptedAt)}` : ''}
        ${outcome?.pending ? html`· ${t('page.bench.onThisPhone')}` : nothing}${outcome?.note ? html`<br>“${outcome.note}”` : nothing}</p></div>
    ${stage.state === 'open' ? nothing : html`<a class="button plain" href=${to('outcome', cell.id, stage.key)}
      aria-label=${t(outcome ? 'page.bench.correctStage' : 'page.bench.recordStage', { stage: t(`catalogue.stage.${stage.key}`) })}>
      ${t(outcome ? 'page.bench.correct' : 'page.bench.record')}</a>`}</li>`;
}

const failureWords = outcome => (outcome.failure ? t(`catalogue.failure.${outcome.failure}`) : t('page.bench.failed'));

const readingSection = (cell, readings, units) => html`<section class="flow"><h2>${t('page.bench.readings')}</h2>
  <ul class="bare readings">${KINDS.map(kind => readingRow(cell, kind, readings.filter(each => each.kind === kind), units))}</ul>
  ${curve(readings.filter(each => each.kind === 'sweep' && !each.pending).at(-1)?.points ?? [])}</section>`;

function readingRow(cell, kind, readings, units) {
  const latest = readings.at(-1);
  return html`<li><a class="reading" href=${to(kind, cell.id)}><bw-icon name=${kind}></bw-icon>
    <span><strong>${t(`page.bench.reading.${kind}`)}</strong>
      <span class="soft small">${latest ? readingWords(latest, units) : t('page.bench.notYet')}</span>
      ${latest && setAsideReason(latest) ? html`<span class="small">${t('page.bench.setAside', { reason: setAsideReason(latest) })}</span>` : nothing}
      ${latest?.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}</span>
    <bw-icon name=${latest ? 'next' : 'add'}></bw-icon></a></li>`;
}
