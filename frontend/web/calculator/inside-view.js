/** What happens inside a cell: five numbers of one diode, and the curve that they make. */
import { ask } from '../core/http.js';
import { prefixed } from '../core/format.js';
import { has, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { changedKeys, moveSentence } from './changes.js';
import { figureTable, textsOf } from './figures.js';
import { slide } from './inputs.js';
import { drawPlot, lineOf, plotBox, plotCaption } from './plot.js';
import { diodeQuestion } from './questions.js';

const FIVE = ['photocurrent', 'saturation', 'ideality', 'series', 'shunt'];
const KEYS = [...FIVE, 'temperature'];
const FIGURES = { shortCircuitCurrentA: 'A', openCircuitVoltageV: 'V', maximumPowerW: 'W', voltageAtMaximumPowerV: 'V', currentAtMaximumPowerA: 'A' };
const IN_TABLE = 9;

export const insideView = {
  keys: KEYS,
  question: diodeQuestion,
  answer: async (body, signal) => ({ ...await ask('/api/calculations/diode', body, signal), voltagesV: body.voltagesV }),
  fieldOf: {
    photocurrentA: 'photocurrent', saturationCurrentA: 'saturation', idealityFactor: 'ideality',
    seriesResistanceOhm: 'series', shuntResistanceOhm: 'shunt', temperatureC: 'temperature',
  },
  inputs: context => KEYS.map(key => html`<div>${slide(key, context)}<p class="hint">${t(`page.calculator.inside.${key}`)}</p></div>`),
  picture: plotBox,
  details,
  sentence: ({ now }) => t('page.calculator.insideWords', { power: prefixed(now.maximumPowerW, 'W'), voltage: prefixed(now.voltageAtMaximumPowerV, 'V') }),
  move: ({ now, before }) => powerMove(now, before),
  drawn: (canvas, { now, before }) => drawPlot(canvas, {
    dots: [], line: lineOf(now.voltagesV, now), earlier: before ? lineOf(before.voltagesV, before) : [], figures: now,
  }),
};

/** Both powers in the unit of the new one. */
export function powerMove(now, before) {
  const { value, unit } = textsOf({ value: now.maximumPowerW }, 'W');
  const earlier = textsOf({ value: before.maximumPowerW }, 'W');
  return earlier.unit === unit ? moveSentence(t('page.calculator.move.power'), earlier.value, value, unit)
    : t('page.calculator.became', { name: t('page.calculator.move.power'), before: `${earlier.value} ${earlier.unit}`, now: `${value} ${unit}` });
}

function details({ now, before, start, tried }) {
  const changed = changedKeys(start, tried, KEYS);
  const why = changed.length === 1 && has(`page.calculator.why.${changed[0]}`);
  return html`${why ? html`<p>${t(`page.calculator.why.${changed[0]}`)}</p>` : nothing}
    ${plotCaption()}
    ${figureTable(Object.entries(FIGURES).map(([key, unit]) => ({
      name: t(`page.calculator.curve.${key}`), figure: { value: now[key] }, unit, before: before && { value: before[key] },
    })))}
    ${asTable(lineOf(now.voltagesV, now))}`;
}

/** The curve for people who do not see it, and for a graph on paper. */
export function asTable(line) {
  const step = Math.max(1, Math.floor(line.length / IN_TABLE));
  const some = line.filter((_, i) => i % step === 0 || i === line.length - 1);
  return html`<details class="fold"><summary>${t('page.calculator.asTable')}</summary>
    <table><thead><tr><th scope="col" class="number">${t('page.calculator.column.voltage')}</th><th scope="col" class="number">${t('page.calculator.column.current')}</th></tr></thead>
      <tbody>${some.map(({ voltageV, currentA }) => html`<tr><td class="number">${prefixed(voltageV, 'V')}</td><td class="number">${prefixed(currentA, 'A')}</td></tr>`)}</tbody></table></details>`;
}
