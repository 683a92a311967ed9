/** What to do with a cell now: its next step with what can hurt, how it is done and its clock; or what a failure teaches. */
import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { advice } from './advice.js';
import { caution } from './caution.js';
import { howTo } from './how-to.js';
import { to } from './routes.js';
import { comeBackAt, settledFrom } from './timers.js';

/** @param next {kind, stage} as in progress.js */
export function nowPanel(cell, { kind, stage }, data) {
  if (kind === 'failed') return ended(cell, stage);
  if (kind === 'done') return again(cell, comeBackAt(data.result(cell.id), data.readings(cell.id)));
  if (kind !== 'stage') return measureNow(cell, kind, stage);
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t(`catalogue.stage.${stage.key}`)}</h2>
    ${caution(stage, cell)}
    ${howTo(stage.key)}
    <bw-step-timer .cell=${cell} .stage=${stage.key}></bw-step-timer>
    ${stage.hot && !isOnHeater(data, cell) ? html`<p><a class="button quiet" href=${to('heater', cell.id)}>${t('page.lesson.putIn')}</a></p>` : nothing}
    <a class="button whole" href=${to('outcome', cell.id, stage.key)}>${t('page.bench.recordOutcome')}</a></section>`;
}

const isOnHeater = ({ slots }, { id }) => slots.some(slot => slot.cellId === id && !slot.outAt);

function measureNow(cell, kind, stage) {
  const settled = settledFrom(cell);
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t(`page.bench.reading.${kind}`)}</h2>
    ${settled > serverClock.now() ? html`<p><bw-time-left .until=${settled} .over=${t('page.bench.timeIsUp')}></bw-time-left></p>
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
  const { failure, note } = stage.outcome;
  return html`<section class="now flow" aria-label=${t('page.bench.next')}>
    <h2>${t('page.bench.endedAt', { stage: t(`catalogue.stage.${stage.key}`) })}</h2>
    ${failure ? html`<p>${t(`catalogue.failure.${failure}`)}${note ? html`<br>${t('page.quoted', { words: note })}` : nothing}</p>${advice(failure)}` : nothing}
    <p class="small">${t('page.bench.failureCounts')}</p>
    <a class="button whole quiet" href=${to('outcome', cell.id, stage.key)}>${t('page.bench.doneAgain')}</a></section>`;
}
