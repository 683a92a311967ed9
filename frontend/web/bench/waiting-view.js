/** Everything this phone still holds: what waits, what was refused and why, and the way back to its form. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { back } from './cell-view.js';
import { to } from './routes.js';

export function waitingView(outbox) {
  const { entries } = outbox;
  return html`<div class="flow">${back()}
    <h1>${t('page.bench.waiting')}</h1>
    ${entries.length ? html`<p class="soft">${t('page.bench.waitingLead')}</p>` : html`<p>${t('page.bench.nothingWaits')}</p>`}
    <ul class="bare flow">${entries.map(entry => html`<li class="card flow waiting">${row(entry, outbox)}</li>`)}</ul>
    ${entries.some(entry => entry.state === 'waiting') ? html`<button class="button quiet" @click=${() => outbox.drain()}>${t('page.bench.tryNow')}</button>` : nothing}
  </div>`;
}

function row(entry, outbox) {
  const refused = entry.state === 'refused';
  return html`<div class="apart"><h2>${t('page.bench.cell', { label: entry.about.label })}: ${aboutWords(entry.about)}</h2>
      <span class="tag ${refused ? 'impossible' : 'pending'}"><bw-icon name=${refused ? 'impossible' : 'waiting'}></bw-icon>
        ${t(refused ? 'page.bench.refused' : 'page.bench.onThisPhone')}</span></div>
    <p class="soft small">${t('page.bench.madeAt', { time: clock(entry.madeAt) })}</p>
    ${refused ? html`<p>${entry.problem.detail}</p>
      ${['heaterOut', 'planned'].includes(entry.about.kind) ? nothing : html`<p><a class="button" href=${to('again', entry.id)}>${t('page.bench.correctIt')}</a></p>`}
      <details class="fold"><summary>${t('page.bench.discard')}</summary><div class="flow"><p>${t('page.bench.discardSure')}</p>
        <button class="button quiet" @click=${() => outbox.discard(entry.id)}>${t('page.bench.discardYes')}</button></div></details>` : nothing}`;
}

export function aboutWords({ kind, stage, reading, work }) {
  if (kind === 'outcome') return t(`catalogue.stage.${stage}`);
  if (kind === 'event') return t(`page.bench.work.${work}`);
  return kind === 'reading' ? t(`page.bench.reading.${reading}`) : t(`page.bench.about.${kind}`);
}
