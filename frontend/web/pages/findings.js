/** Findings: one build parameter against the power of the class's cells, and what may be concluded from it. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { cellTable } from './findings-cells.js';
import { figures } from './findings-figures.js';
import { levelTable } from './findings-levels.js';
import { drawFinding } from './findings-plot.js';
import { parameterChoice } from './findings-choice.js';
import { wordsFor } from './findings-words.js';
import { refusal, sentenceOf } from './refusal.js';

const FIRST = 'bakeTemperature';
const KEPT = 'berrywatt.findings.parameter';

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('findings');
header.day = labDayId;
const { parameters, units } = await get('/api/catalogue');
let parameter = sessionStorage.getItem(KEPT) ?? FIRST;
let finding = null;
let problem = null;

async function load() {
  try {
    const asked = parameter;
    const answer = await get(`/api/labdays/${labDayId}/findings?parameter=${encodeURIComponent(asked)}`);
    if (asked !== parameter) return;
    finding = answer;
    problem = null;
  } catch (error) {
    problem = error;
  }
  if (finding) show();
  else draw(refusal(problem));
}

function choose(key) {
  parameter = key;
  sessionStorage.setItem(KEPT, key);
  load();
}

function show() {
  const words = wordsFor(finding, units);
  draw(html`<div class="findings">
    <div class="question">
      <h1>${t('page.findings.title')}</h1>
      ${parameterChoice(parameters, parameter, choose)}
    </div>
    ${problem ? html`<bw-notice tone="unusual" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    ${answer(words)}
    <figure class="card">
      <div class="scroll"><div class="plot"><canvas></canvas></div></div>
      <figcaption>${teams()}<p class="soft small">${t('page.findings.caption')}</p></figcaption>
    </figure>
    <div class="beneath">
      <section class="flow"><h2>${t('page.findings.levels')}</h2>${levelTable(finding, words)}</section>
      <div class="flow-wide">${figures(finding)}${notes(words)}</div>
    </div>
    ${cellTable(finding, words)}
  </div>`);
  drawFinding(document.querySelector('canvas'), finding, words);
}

function answer(words) {
  return html`<div class="answer ${finding.strength}" role="status"><p class="sentence">${words.sentence(finding.sentence)}</p></div>`;
}

function notes(words) {
  if (finding.notes.length === 0) return nothing;
  return html`<section class="flow"><h2>${t('page.findings.notes')}</h2>
    <ul class="notes">${finding.notes.map(note => html`<li>${words.sentence(note)}</li>`)}</ul></section>`;
}

function teams() {
  const seen = new Map(finding.dots.map(dot => [dot.mark, dot.team]));
  return html`<ul class="bare teams">${[...seen].sort(([a], [b]) => a - b).map(([mark, name]) =>
    html`<li><bw-mark .mark=${mark}></bw-mark> ${name}</li>`)}</ul>`;
}

followLeaderboard(labDayId).addEventListener('change', watch());
addEventListener('hashchange', () => location.reload());
load();

/** Reads the finding again when a new leaderboard came in. */
function watch() {
  let seen = null;
  return ({ target }) => {
    if (seen && target.body !== seen) load();
    seen = target.body;
  };
}
