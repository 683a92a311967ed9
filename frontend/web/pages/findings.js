/** Findings: what the class's cells say about their build parameters, in sentences first; without a day, of several or a file. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { changed, travelling } from '../findings/filters.js';
import { drawReport, report } from '../findings/report.js';
import { many } from '../findings/many.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { refusal, sentenceOf } from './refusal.js';

const KEPT = 'berrywatt.findings.parameter';
const KEPT_ONLY = `berrywatt.findings.only.${location.hash}`;

const labDayId = location.hash.slice(1);
const { who, header, draw } = await openPage('findings');
header.day = labDayId;
const { units } = await get('/api/catalogue');
const state = { parameter: sessionStorage.getItem(KEPT), level: null, facet: null, only: keptFilter() };
let findings = null;
let measured = [];
let problem = null;

async function load() {
  try {
    const query = new URLSearchParams(travelling(state.only).map(each => ['only', each]));
    [findings, measured] = await Promise.all([get(`/api/labdays/${labDayId}/findings?${query}`), get(`/api/labdays/${labDayId}/curves`)]);
    problem = null;
  } catch (error) {
    problem = error;
  }
  if (findings) show();
  else draw(refusal(problem));
}

function change({ filter, ...parts }) {
  Object.assign(state, parts);
  if (parts.parameter) sessionStorage.setItem(KEPT, parts.parameter);
  if (filter) {
    state.only = changed(state.only, ...filter);
    sessionStorage.setItem(KEPT_ONLY, JSON.stringify([...state.only].map(([key, values]) => [key, [...values]])));
    load();
    return;
  }
  show();
  if (parts.parameter) document.getElementById('behind').scrollIntoView({ block: 'start' });
}

function show() {
  const parts = { findings, measured, units, state, change };
  draw(html`<div class="findings">
    <div class="apart"><h1>${t('page.findings.title')}</h1>
      ${who.kind === 'teacher' ? html`<a href="/findings.html">${t('page.findings.toMany')}</a>` : nothing}</div>
    ${problem ? html`<bw-notice tone="unusual" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    ${report(parts)}
  </div>`);
  drawReport(parts);
}

function keptFilter() {
  const kept = JSON.parse(sessionStorage.getItem(KEPT_ONLY) ?? '[]');
  return new Map(kept.map(([key, values]) => [key, new Set(values)]));
}

/** Reads the findings again when a new leaderboard came in. */
function watch() {
  let seen = null;
  return ({ target }) => {
    if (seen && target.body !== seen) load();
    seen = target.body;
  };
}

addEventListener('hashchange', () => location.reload());
if (labDayId) {
  followLeaderboard(labDayId).addEventListener('change', watch());
  load();
} else {
  many({ draw, units });
}
