/** Findings: what the class's cells say about their build parameters, in sentences first. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { cellTable } from '../findings/cells.js';
import { downloads } from '../findings/downloads.js';
import { figures } from '../findings/figures.js';
import { joint } from '../findings/joint.js';
import { levelTable } from '../findings/levels.js';
import { next } from '../findings/next.js';
import { compared, overview } from '../findings/overview.js';
import { drawFinding } from '../findings/plot.js';
import { together } from '../findings/together.js';
import { wordsFor } from '../findings/words.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { refusal, sentenceOf } from './refusal.js';

const KEPT = 'berrywatt.findings.parameter';

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('findings');
header.day = labDayId;
const { units } = await get('/api/catalogue');
let chosen = sessionStorage.getItem(KEPT);
let findings = null;
let problem = null;

async function load() {
  try {
    findings = await get(`/api/labdays/${labDayId}/findings`);
    problem = null;
  } catch (error) {
    problem = error;
  }
  if (findings) show();
  else draw(refusal(problem));
}

function choose(parameter) {
  chosen = parameter;
  sessionStorage.setItem(KEPT, parameter);
  show();
  document.getElementById('behind').scrollIntoView({ block: 'start' });
}

function show() {
  const { study } = findings;
  const words = wordsFor(findings, units);
  const one = study.parameters.find(({ parameter }) => parameter === chosen) ?? compared(findings)[0] ?? study.parameters[0];
  draw(html`<div class="findings">
    <h1>${t('page.findings.title')}</h1>
    ${problem ? html`<bw-notice tone="unusual" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    <p class="soft">${leftOut()}</p>
    ${one ? html`${overview(findings, one.parameter, words, choose)}${behind(one, words)}` : html`<p>${t('page.findings.noCells')}</p>`}
    ${next(study, words)}
    <div class="beneath">${joint(study, words)}${together(study, words)}</div>
  </div>`);
  if (one) drawFinding(document.querySelector('.findings canvas'), one, findings.cells, words);
}

/** Always in sight: who is compared and who is not. */
function leftOut() {
  const count = standing => findings.cells.filter(cell => cell.standing === standing).length;
  return t('page.findings.leftOut', { counted: count('counts'), failed: count('failed'), waiting: count('waiting') });
}

function behind(one, words) {
  return html`<section class="behind" id="behind">
    <h2>${words.parameter(one.parameter)}</h2>
    <div class="answer ${one.strength}" role="status"><p class="sentence">${words.sentence(one.sentence, one.parameter)}</p></div>
    <figure class="card">
      <div class="scroll"><div class="plot"><canvas></canvas></div></div>
      <figcaption>${teams()}<p class="soft small">${t('page.findings.caption')}</p>${downloads(one, findings.cells)}</figcaption>
    </figure>
    <div class="beneath">
      <div class="flow"><h3>${t('page.findings.levels')}</h3>${levelTable(one, words)}</div>
      <div class="flow-wide">${notes(one, words)}${figures(one, one.parameter, words)}</div>
    </div>
    ${cellTable(one, findings.cells, words)}
  </section>`;
}

function notes({ notes: all, parameter }, words) {
  if (all.length === 0) return nothing;
  return html`<div class="flow"><h3>${t('page.findings.notes')}</h3>
    <ul class="notes">${all.map(note => html`<li>${words.sentence(note, parameter)}</li>`)}</ul></div>`;
}

function teams() {
  const seen = new Map(findings.cells.map(({ mark, team }) => [mark, team]));
  return html`<ul class="bare teams">${[...seen].sort(([a], [b]) => a - b).map(([mark, name]) =>
    html`<li><bw-mark .mark=${mark}></bw-mark> ${name}</li>`)}</ul>`;
}

followLeaderboard(labDayId).addEventListener('change', watch());
addEventListener('hashchange', () => location.reload());
load();

/** Reads the findings again when a new leaderboard came in. */
function watch() {
  let seen = null;
  return ({ target }) => {
    if (seen && target.body !== seen) load();
    seen = target.body;
  };
}
