import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { cellTable } from './cells.js';
import { curves, drawCurvesOf } from './curves.js';
import { downloads, levelsOf, tableOf } from './downloads.js';
import { figures } from './figures.js';
import { filters } from './filters.js';
import { joint } from './joint.js';
import { levelTable } from './levels.js';
import { next } from './next.js';
import { compared, overview } from './overview.js';
import { drawFinding } from './plot.js';
import { together } from './together.js';
import { wordsFor } from './words.js';

const MOST_TEAMS = 24;

/**
 * Findings as a page reads them, whichever cells they are of. `state` is what a reader has chosen: `parameter`, `level` of the
 * curves, `only` and `facet` of the filter; `measured` are the curves, null where there are none to have; `change` takes the
 * state's new parts.
 */
export function report({ findings, measured, units, state, change }) {
  const words = wordsFor(findings, units);
  const one = chosen(findings, state);
  const { study, notes } = findings;
  return html`${filters({ findings, words, only: state.only, facet: state.facet, open: facet => change({ facet }),
      set: (...what) => change({ filter: what }), compared: compares(findings) })}
    ${notes.map(note => html`<bw-notice tone="unusual" .text=${words.sentence(note, null)}></bw-notice>`)}
    ${one ? html`${overview(findings, one.parameter, words, parameter => change({ parameter }))}${behind(findings, one, words, { measured, state, change })}`
      : html`<p>${t(findings.looked === 0 && findings.all > 0 ? 'page.findings.noCellsLeft' : 'page.findings.noCells')}</p>`}
    ${next(study, words)}
    <div class="beneath">${joint(study, words)}${together(study, words)}</div>`;
}

/** After the page is drawn. */
export function drawReport({ findings, measured, units, state }) {
  const one = chosen(findings, state);
  if (!one) return;
  const words = wordsFor(findings, units);
  drawFinding(document.querySelector('#behind canvas'), one, findings.cells, words);
  if (measured) drawCurvesOf(document.querySelector('.curves canvas'), { one, cells: findings.cells, measured, level: levelOf(one, state), words });
}

const chosen = (findings, { parameter }) =>
  findings.study.parameters.find(each => each.parameter === parameter) ?? compared(findings)[0] ?? findings.study.parameters[0];

/** Who is compared and who is not, among the cells looked at. */
function compares({ study, cells, looked }) {
  const count = standing => cells.filter(cell => cell.standing === standing).length;
  return looked > cells.length
    ? t('page.findings.selection', { shown: cells.length, looked, parameters: study.parameters.length })
    : t('page.findings.leftOut', { counted: count('counts'), failed: count('failed'), waiting: count('waiting') });
}

function behind(findings, one, words, { measured, state, change }) {
  const { cells } = findings;
  const title = titleOf(findings, one, words);
  return html`<section class="behind" id="behind">
    <h2>${words.parameter(one.parameter)}</h2>
    <div class="answer ${one.strength}" role="status"><p class="sentence">${words.sentence(one.sentence, one.parameter)}</p></div>
    <figure class="card">
      <div class="scroll"><div class="plot"><canvas></canvas></div></div>
      <figcaption>${teams(cells)}<p class="soft small">${t('page.findings.caption')}</p>
        ${downloads({ name: one.parameter, title, data: () => tableOf(one, cells, words) })}</figcaption>
    </figure>
    <div class="beneath">
      <div class="flow"><h3>${t('page.findings.levels')}</h3>
        ${one.levels.length === 0 ? html`<p class="soft">${t('page.findings.manyLevels')}</p>`
          : html`${levelTable(one, words)}${downloads({ name: `${one.parameter}-levels`, data: () => levelsOf(one, words), picture: false })}`}</div>
      <div class="flow-wide">${notes(one, words)}${figures(one, one.parameter, words)}</div>
    </div>
    ${measured ? curves({ one, cells, measured, words, title, level: levelOf(one, state), choose: level => change({ level: { parameter: one.parameter, level } }) }) : nothing}
    ${cellTable(one, cells, words)}
  </section>`;
}

/** Of another parameter a level means nothing. */
const levelOf = (one, { level }) => (level?.parameter === one.parameter ? level.level : null);

const titleOf = ({ looked, all }, one, words) =>
  `${words.parameter(one.parameter)} · ${t(looked < all ? 'page.findings.lookedSome' : 'page.findings.lookedAll', { looked, all })}`;

function notes({ notes: all, parameter }, words) {
  if (all.length === 0) return nothing;
  return html`<div class="flow"><h3>${t('page.findings.notes')}</h3>
    <ul class="notes">${all.map(note => html`<li>${words.sentence(note, parameter)}</li>`)}</ul></div>`;
}

/** Marks are of teams of one day; of many days one mark would be several teams. */
function teams(cells) {
  const seen = new Map(cells.filter(({ mark }) => mark != null).map(({ mark, team, day }) => [`${day} ${mark}`, { mark, team }]));
  if (seen.size === 0 || seen.size > MOST_TEAMS || new Set(cells.map(({ day }) => day)).size > 1) return nothing;
  return html`<ul class="bare teams">${[...seen.values()].sort((a, b) => a.mark - b.mark).map(({ mark, team }) =>
    html`<li><bw-mark .mark=${mark}></bw-mark> ${team}</li>`)}</ul>`;
}
