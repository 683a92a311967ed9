/** What a load sweep tells: its figures, and the one diode that runs through it. */
import { ask } from '../core/http.js';
import { prefixed } from '../core/format.js';
import { remark, t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { toAddress } from './address.js';
import { figureOf, figureTable } from './figures.js';
import { number } from './inputs.js';
import { powerMove } from './inside-view.js';
import { drawPlot, lineOf, plotBox, plotCaption } from './plot.js';
import { curveQuestion, diodeBody } from './questions.js';
import { sweepRows } from './sweep-rows.js';

const FIGURES = { shortCircuitCurrentA: 'A', openCircuitVoltageV: 'V', maximumPowerW: 'W', fillFactor: '1' };
const FIVE = {
  photocurrentA: ['photocurrent', 'A'], saturationCurrentA: ['saturation', 'A'], idealityFactor: ['ideality', '1'],
  seriesResistanceOhm: ['series', 'Ω'], shuntResistanceOhm: ['shunt', 'Ω'],
};

export const curveView = {
  keys: ['pair', 'voltageUnit', 'currentUnit', 'rows', 'temperature'],
  question: curveQuestion,
  answer,
  fieldOf: { temperatureC: 'temperature' },
  inputs: context => html`${sweepRows(context)}${number('temperature', context, true)}`,
  picture: plotBox,
  details,
  sentence: ({ now }) => t('page.calculator.curveWords', {
    power: prefixed(now.maximumPowerW, 'W'), percent: Math.round(now.fillFactor * 100),
  }),
  move: ({ now, before }) => powerMove(now, before),
  drawn: (canvas, { now, before }) => drawPlot(canvas, {
    dots: now.points ?? [], line: lineOf(now.voltagesV, now.drawn), earlier: before ? lineOf(before.voltagesV, before.drawn) : [], figures: now,
  }),
};

async function answer(body, signal) {
  const figures = await ask('/api/calculations/curve', body, signal);
  const diode = diodeBody({ ...fiveOf(figures.diode), temperatureC: body.temperatureC });
  return { ...figures, voltagesV: diode.voltagesV, drawn: await ask('/api/calculations/diode', diode, signal) };
}

const fiveOf = diode => Object.fromEntries(Object.keys(FIVE).map(key => [key, diode[key]]));

function details({ now, before, tried }) {
  return html`<p>${curveView.sentence({ now })}</p>
    ${plotCaption()}
    ${figureTable(Object.entries(FIGURES).map(([key, unit]) => ({
    name: t(`page.calculator.curve.${key}`), figure: figureOf(now, key), unit, before: before && figureOf(before, key),
  })))}
    ${now.notes.map(note => html`<p class="soft">${remark(note)}</p>`)}
    ${fitted(now.diode, before?.diode, tried)}`;
}

function fitted(diode, before, tried) {
  return html`<section class="flow"><h2>${t('page.calculator.fitted')}</h2>
    <p class="soft">${t('page.calculator.fittedWords', { rmse: prefixed(diode.rmseA, 'A') })}</p>
    ${figureTable(Object.entries(FIVE).map(([key, [name, unit]]) => ({
      name: t(`page.calculator.field.${name}`), figure: figureOf(diode, key), unit, told: !diode.unidentifiable.includes(key),
      before: before && !before.unidentifiable.includes(key) ? figureOf(before, key) : null,
    })))}
    <p><a class="button quiet" href=${toAddress('inside', { ...tried, ...typedFive(diode) })}>${t('page.calculator.lookInside')}</a></p></section>`;
}

/** The fitted numbers as somebody would type them. */
function typedFive(diode) {
  const units = { A: ['uA', 1e-6], 1: ['one', 1], Ω: ['ohm', 1] };
  return Object.fromEntries(Object.entries(FIVE).map(([key, [name, symbol]]) => {
    const [unit, scale] = name === 'saturation' ? ['nA', 1e-9] : units[symbol];
    return [name, { text: String(Number((diode[key] / scale).toPrecision(4))), unit }];
  }));
}
