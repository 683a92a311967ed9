/** Findings of several lab days, or of a file: what to compare, how far it has come, what comes of it. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { refusal, sentenceOf } from '../pages/refusal.js';
import { chooseDays, daysRequest } from './days.js';
import { chooseFile, fileRequest, lookAt } from './file.js';
import { changed, travelling } from './filters.js';
import { drawReport, report } from './report.js';
import { follow, progress } from './run.js';

/** Draws the page and lives on it; `units` are the catalogue's. */
export async function many({ draw, units }) {
  const page = { draw, units, source: 'days', days: [], picked: new Set(), measure: 'power', file: null,
    run: null, findings: null, asked: null, problem: null, state: { parameter: null, level: null, facet: null, only: new Map() } };
  try {
    page.days = await get('/api/labdays');
  } catch (error) {
    draw(refusal(error));
    return;
  }
  show(page);
}

function show(page) {
  const { draw, source, problem, run, findings, units, state } = page;
  const parts = findings && { findings, measured: null, units, state, change: parts => change(page, parts) };
  const set = more => show(Object.assign(page, more));
  draw(html`<div class="findings many">
    <h1>${t('page.findings.manyTitle')}</h1>
    <p>${t('page.findings.manyLead')}</p>
    <bw-choices .legend=${t('page.findings.manySource')} .value=${source} .options=${['days', 'file'].map(key => ({ key, label: t(`page.findings.source.${key}`) }))}
      @chosen=${({ detail }) => set({ source: detail, problem: null })}></bw-choices>
    <section class="card flow">${source === 'days'
      ? chooseDays(page, set, () => start(page, daysRequest(page)))
      : chooseFile(page, { read: file => attempt(page, () => lookAt(page, file)), start: () => start(page, fileRequest(page)) })}</section>
    ${problem ? html`<bw-notice tone="impossible" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    ${run ? progress(run, () => run.stop()) : nothing}
    ${parts ? html`<div class="flow-wide" id="said">${report(parts)}</div>` : nothing}
  </div>`);
  if (parts) drawReport(parts);
}

/** Anew, with all cells. */
function start(page, asked) {
  Object.assign(page, { asked, findings: null });
  page.state.only = new Map();
  page.state.parameter = null;
  ask(page);
}

async function ask(page) {
  page.run?.stop();
  page.run = null;
  await attempt(page, async () => {
    const started = await page.asked(travelling(page.state.only));
    page.run = follow(started, {
      changed: () => show(page),
      said: findings => show(Object.assign(page, { findings })),
      failed: error => show(Object.assign(page, { problem: error, run: null })),
    });
  });
}

function change(page, { filter, ...parts }) {
  Object.assign(page.state, parts);
  if (filter) {
    page.state.only = changed(page.state.only, ...filter);
    ask(page);
    return;
  }
  show(page);
  if (parts.parameter) document.getElementById('behind').scrollIntoView({ block: 'start' });
}

async function attempt(page, work) {
  page.problem = null;
  try {
    const done = work();
    show(page);
    await done;
  } catch (error) {
    page.problem = error;
  }
  show(page);
}
