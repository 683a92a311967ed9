/** Calculator: retype a number, move the light, and see curve and result follow. Everything is worked out by the server. */
import { VIEWS, toAddress } from '../calculator/address.js';
import { cellView } from '../calculator/cell-view.js';
import { changeSentence } from '../calculator/changes.js';
import { clearRows, complainBeside } from '../calculator/complaint.js';
import { curveView } from '../calculator/curve-view.js';
import { EXAMPLE } from '../calculator/example.js';
import { insideView } from '../calculator/inside-view.js';
import { lightView } from '../calculator/light-view.js';
import { Trial } from '../calculator/trial.js';
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, keyed, nothing, openPage } from '../kit/kit.js';
import { sentenceOf } from './refusal.js';

/** So long after the last change the result is told to those who hear it. */
const TELL_MS = 1_000;
const views = { cell: cellView, light: lightView, curve: curveView, inside: insideView };

const { draw } = await openPage('calculator');
const catalogue = await get('/api/catalogue');
const trial = new Trial(views, catalogue, EXAMPLE);
let telling = null;

function show() {
  const { view, tried, start, now, before, problem } = trial;
  const parts = { now, before, tried, start };
  const context = { tried, catalogue, set: change => trial.change(change) };
  history.replaceState({ start }, '', trial.address);
  draw(html`<div class="calculator flow-wide">
    <div><h1>${t('page.calculator.title')}</h1><p class="soft">${tried.label ? t('page.calculator.ofCell', { label: tried.label }) : t('page.calculator.lead')}</p></div>
    <nav class="questions" aria-label=${t('page.calculator.questions')}>${VIEWS.filter(key => views[key]).map(key => html`<a href=${toAddress(key, tried)}
      aria-current=${key === view ? 'page' : nothing}>${t(`page.calculator.question.${key}`)}</a>`)}</nav>
    ${keyed(view, html`<div class="try">
      <section class="inputs" aria-label=${t('page.calculator.numbers')}>${views[view].inputs(context)}</section>
      <div class="outcome">
        <section class="picture card flow" aria-label=${t('page.calculator.answer')}>${now ? views[view].picture(parts) : html`<p class="soft">${t('page.calculator.working')}</p>`}
          ${now && before ? html`<p class="move">${views[view].move(parts)}</p>` : nothing}
          ${trial.changed ? undo() : nothing}</section>
        <section class="details flow" aria-label=${t('page.calculator.more')}>
          ${trouble()}
          ${trial.changed ? changed() : nothing}
          ${now ? views[view].details(parts) : nothing}</section>
      </div>
    </div>`)}
    <bw-status class="unseen"></bw-status>
  </div>`);
  if (now) views[view].drawn?.(document.querySelector('.calculator canvas'), parts);
  queueMicrotask(() => placeProblem(problem));
  tellLater();
}

function trouble() {
  if (trial.silent) return html`<bw-notice tone="unusual" .text=${t('page.calculator.silent')}></bw-notice>`;
  if (trial.problem && !trial.problem.placed) return html`<bw-notice tone="impossible" .text=${sentenceOf(trial.problem)}></bw-notice>`;
  return trial.unready ? html`<bw-notice tone="info" .text=${t('page.calculator.unready')}></bw-notice>` : nothing;
}

function changed() {
  const { tried, start, view } = trial;
  return html`<div class="apart changed"><p>${changeSentence(start, tried, views[view].keys, catalogue.units)}</p>
    ${undo()}</div>`;
}

/** On a wide screen it stands in the card that stays in sight, on a phone below the numbers: one of both is shown. */
const undo = () => html`<button type="button" class="button quiet undo" @click=${back}>${t('page.calculator.back')}</button>`;

function back() {
  trial.change({ ...trial.start });
}

/** A refusal that finds its field stands there; only another one needs a place of its own. */
function placeProblem(problem) {
  const root = document.querySelector('.calculator .inputs');
  clearRows(root);
  if (problem && !problem.placed && complainBeside(root, problem, views[trial.view].fieldOf)) {
    problem.placed = true;
    show();
  }
}

function tellLater() {
  clearTimeout(telling);
  telling = setTimeout(() => {
    if (trial.now && !trial.problem) document.querySelector('.calculator bw-status').say(views[trial.view].sentence(trial));
  }, TELL_MS);
}

trial.addEventListener('changed', show);
addEventListener('hashchange', () => trial.open(location.hash));
trial.open(location.hash, history.state?.start);
