/** What a cell is worth: its readings brought to the reference light, with the interval and the whole calculation. */
import { currentDensityTexts, figureTexts, powerDensityTexts, voltageTexts } from '../core/format.js';
import { ask } from '../core/http.js';
import { has, remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { CELL_KEYS, cellFields } from './cell-fields.js';
import { cellQuestion } from './cell-question.js';
import { changedKeys, moveSentence } from './changes.js';
import { textTable } from './figures.js';
import { span } from './span.js';
import { budgetShares, workedSteps } from './worked.js';

/** Smaller shares round to nothing and only lengthen the list. */
const WORTH_SHOWING = 0.005;

const FIGURES = {
  effectiveIrradianceWm2: figure => figureTexts(figure, 1, 'W/m²'),
  currentDensityAm2: currentDensityTexts,
  openCircuitVoltageV: voltageTexts,
  fillFactor: figure => figureTexts(figure, 1, ''),
  powerDensityWm2: powerDensityTexts,
  efficiencyAsMeasured: figure => figureTexts(figure, 0.01, '%'),
};

export const cellView = {
  keys: CELL_KEYS,
  question: cellQuestion,
  answer: (body, signal) => ask('/api/calculations/normalisation', body, signal),
  fieldOf: {
    voltageV: 'voltage', currentA: 'current', darkCurrentA: 'dark', areaCm2: 'area', referenceIrradianceWm2: 'reference',
    temperatureC: 'temperature', light: 'light', 'light.source': 'lamp', 'light.instrument': 'instrument', 'light.dye': 'dye',
    'light.illuminanceLx': 'light', 'light.irradianceWm2': 'light', 'light.readAtM': 'readAt', 'light.distanceM': 'distance',
    'light.angleDeg': 'angle',
  },
  inputs: cellFields,
  picture,
  details,
  sentence: ({ now }) => t('page.calculator.cellWords', powerDensityTexts(now.powerDensityWm2)),
  move: ({ now, before }) => moveSentence(t('page.calculator.move.cell'),
    ...[before, now].map(each => powerDensityTexts(each.powerDensityWm2).value), 'µW/cm²'),
};

function picture({ now, before }) {
  const texts = powerDensityTexts(now.powerDensityWm2);
  const most = Math.max(...[now, before].filter(Boolean).map(each => each.powerDensityWm2.high));
  return html`<p class="figure">${texts.value} <span class="unit">${texts.unit}</span></p>
    ${span(now.powerDensityWm2, before?.powerDensityWm2, most)}
    <p class="words">${t('page.calculator.cellWords', texts)}</p>`;
}

function details({ now, before, tried, start }) {
  const changed = changedKeys(start, tried, CELL_KEYS);
  const why = changed.length === 1 && has(`page.calculator.cellWhy.${changed[0]}`);
  return html`${why ? html`<p>${t(`page.calculator.cellWhy.${changed[0]}`)}</p>` : nothing}
    ${now.notes.map(note => html`<p class="soft">${remark(note)}</p>`)}
    ${textTable(Object.entries(FIGURES).map(([key, texts]) => ({
      name: t(`page.calculator.cell.${key}`), now: texts(now[key]), before: before && texts(before[key]),
    })))}
    <section class="flow"><h2>${t('page.bench.worked.budget')}</h2>
      ${budgetShares(now.budget.filter(({ share }) => share >= WORTH_SHOWING).sort((a, b) => b.share - a.share))}
      <p class="soft small">${t('page.calculator.budgetRest')}</p></section>
    <details class="fold"><summary>${t('page.bench.worked.title')}</summary>${workedSteps(now.steps)}</details>`;
}
