/** How much of a light counts: the lamp, what was read, the dye; and what the dye makes of it. */
import { ask } from '../core/http.js';
import { remark, t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { moveSentence } from './changes.js';
import { amountOf, figureOf, figureTable, textsOf } from './figures.js';
import { LIGHT_KEYS, lightFields } from './light-fields.js';
import { lightQuestion } from './questions.js';
import { span } from './span.js';

const [COUNTS, TOTAL] = ['effectiveIrradianceWm2', 'irradianceWm2'];

export const lightView = {
  keys: LIGHT_KEYS,
  question: lightQuestion,
  answer: (body, signal) => ask('/api/calculations/light', body, signal),
  fieldOf: { source: 'lamp', illuminanceLx: 'light', irradianceWm2: 'light', readAtM: 'readAt', distanceM: 'distance', angleDeg: 'angle' },
  inputs: lightFields,
  picture,
  details,
  sentence: ({ now }) => headlineWords(now),
  move: ({ now, before }) => moveSentence(t('page.calculator.move.light'), ...[before, now].map(each => textsOf(figureOf(each, COUNTS), 'W/m²').value), 'W/m²'),
};

function picture({ now, before }) {
  const { value, unit } = textsOf(figureOf(now, COUNTS), 'W/m²');
  const most = Math.max(...[now, before].filter(Boolean).flatMap(each => [figureOf(each, COUNTS).high, figureOf(each, TOTAL).high]));
  return html`<p class="figure">${value} <span class="unit">${unit}</span></p>
    <p>${headlineWords(now)}</p>
    <dl class="spans">${[TOTAL, COUNTS].map(name => html`<div><dt>${t(`page.calculator.span.${name}`)}</dt>
      <dd>${span(figureOf(now, name), before && figureOf(before, name), most)}<span class="number">${amountOf(figureOf(now, name), 'W/m²')}</span></dd></div>`)}</dl>`;
}

function headlineWords(now) {
  return t('page.calculator.lightWords', textsOf(figureOf(now, COUNTS), 'W/m²'));
}

function details({ now, before }) {
  const row = (name, unit) => ({ name: t(`page.calculator.light.${name}`), figure: figureOf(now, name), unit, before: before && figureOf(before, name) });
  return html`${figureTable([row('illuminanceLx', 'lx'), row(TOTAL, 'W/m²'), row('efficacyLmPerW', 'lm/W'), row('spectralMismatch', '1'), row(COUNTS, 'W/m²')])}
    ${now.notes.map(note => html`<p class="soft">${remark(note)}</p>`)}
    <p class="soft">${t('page.calculator.light.why')}</p>`;
}
