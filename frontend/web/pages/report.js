/** Report: the class's day in words, tables and drawings, and a page for each team; made to be printed. */
import { day as dateWords } from '../core/format.js';
import { Refused, gather, get } from '../core/http.js';
import { t } from '../core/texts.js';
import { wordsFor } from '../findings/words.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { asides, cautions } from '../report/cautions.js';
import { curves } from '../report/curves.js';
import { evidence, losses } from '../report/evidence.js';
import { method, worked } from '../report/method.js';
import { places } from '../report/places.js';
import { summary } from '../report/summary.js';
import { teamPage } from '../report/team.js';
import { refusal } from './refusal.js';

const AGAIN_MS = 3_000;

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('report');
header.day = labDayId;
let all;

async function load() {
  draw(html`<h1>${t('page.report.title')}</h1><p class="soft" role="status">${t('page.report.gathering')}</p>`);
  try {
    const ofDay = path => gather(`/api/labdays/${labDayId}${path}`);
    const [day, { body: board }, findings, report, stations, cells, catalogue] = await Promise.all(
      [ofDay(''), ofDay('/leaderboard'), ofDay('/findings'), ofDay('/report'), ofDay('/stations'), ofDay('/cells'), get('/api/catalogue')]);
    all = { day, board, findings, report, stations, cells, catalogue, words: wordsFor(findings, catalogue.units) };
    const example = exampleOf(board, report);
    all.result = example ? await gather(`/api/cells/${example}/result`) : null;
    show();
  } catch (error) {
    draw(refusal(error));
    if (!(error instanceof Refused)) setTimeout(load, AGAIN_MS);
  }
}

/** The cell whose calculation is shown in full: one with a sweep, of the first team that has one. */
function exampleOf({ teams }, report) {
  const counting = teams.flatMap(({ cells }) => cells.filter(({ standing }) => standing === 'counts').map(({ cellId }) => cellId));
  const swept = new Set(report.teams.flatMap(({ cells }) => cells).filter(({ sweep }) => sweep.length > 1).map(({ cellId }) => cellId));
  return counting.find(id => swept.has(id)) ?? counting[0] ?? null;
}

function show() {
  const { day, board, report } = all;
  draw(html`<div class="report">
    <header class="flow"><h1>${t('page.report.title')}</h1>
      <p class="soft">${day.title} · ${dateWords(day.date)}</p>
      ${day.resultsFinal ? nothing : html`<bw-notice .text=${t('page.report.notFinal')}></bw-notice>`}
      <div class="beside no-print">${['class', 'teams'].map(what => html`<button class="button ${what === 'class' ? '' : 'quiet'}" @click=${() => print(what)}>${t(`page.report.print.${what}`)}</button>`)}</div></header>
    <div class="class-report">
      ${summary(all)}${places(board)}
      <section class="flow"><h2>${t('page.report.curves')}</h2><p>${t('page.report.curvesMeans')}</p><div class="several">${board.teams.map(teamCurves)}</div></section>
      ${evidence(all)}${losses(all)}${method(all)}${worked(all.result)}${asides(all)}${cautions()}
    </div>
    <div class="team-pages"><h2 class="no-print">${t('page.report.teamPages')}</h2>
      ${board.teams.map(team => html`${teamPage(team, pageOf(report, team), { ...all, saved: noted(team) })}
        <p class="no-print"><button class="button plain" @click=${() => print('one', team.teamId)}>${t('page.report.print.one', { team: team.name })}</button></p>`)}</div>
  </div>`);
}

const pageOf = (report, { teamId }) => report.teams.find(each => each.teamId === teamId);

function teamCurves(team) {
  const drawn = curves(pageOf(all.report, team).cells, team.name);
  return drawn === nothing ? nothing : html`<div class="kept"><h3><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</h3>${drawn}</div>`;
}

/** A comment is kept in what the page knows, so that nothing else is asked for again. */
const noted = team => ({ detail }) => { pageOf(all.report, team).comment = detail; };

/** Prints the class's report, every team's page, or one team's. */
function print(what, teamId) {
  document.body.dataset.print = what;
  document.querySelectorAll('.team').forEach(team => team.classList.toggle('chosen', team.dataset.team === teamId));
  globalThis.print();
}

/** Ctrl+P prints everything again. */
addEventListener('afterprint', () => { delete document.body.dataset.print; });
addEventListener('hashchange', () => location.reload());
load();
