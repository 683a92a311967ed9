/** Brings a curve into the units of its axes and onto the page's canvas. */
import { drawCurve } from '../charts/curve.js';
import { prefixed, scaleOf } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

const drawn = new WeakMap();

/** Points at or above the axis; below it a cell takes power instead of giving it. */
export function lineOf(voltagesV, answer) {
  if (!answer) return [];
  const before = voltagesV.map((voltageV, i) => ({ voltageV, currentA: answer.currentsA[i] }))
    .filter(point => point.currentA > 0 && point.voltageV < answer.openCircuitVoltageV);
  const best = { voltageV: answer.voltageAtMaximumPowerV, currentA: answer.currentAtMaximumPowerA };
  return [...before, best, { voltageV: answer.openCircuitVoltageV, currentA: 0 }].sort((a, b) => a.voltageV - b.voltageV);
}

export const plotBox = () => html`<div class="plot"><canvas></canvas></div>`;

export const plotCaption = () => html`<p class="soft small">${t('page.calculator.plotCaption')}</p>`;

/** @param parts {dots, line, earlier: [{voltageV, currentA}], figures: what holds maximum power and its point} */
export function drawPlot(canvas, { dots, line, earlier, figures }) {
  if (!canvas || dots.length + line.length === 0) return;
  const furthest = key => Math.max(...[...dots, ...line, ...earlier].map(point => Math.abs(point[key])));
  const [x, volt] = scaleOf(furthest('voltageV'), 'V');
  const [y, ampere] = scaleOf(furthest('currentA'), 'A');
  const at = ({ voltageV, currentA }) => ({ x: voltageV / x, y: currentA / y });
  const power = prefixed(figures.maximumPowerW, 'W');
  if (!drawn.has(canvas)) drawn.set(canvas, drawCurve(canvas));
  drawn.get(canvas).show({
    dots: dots.map(at), line: line.map(at), earlier: earlier.map(at),
    best: at({ voltageV: figures.voltageAtMaximumPowerV, currentA: figures.currentAtMaximumPowerA }),
    bestText: power,
    across: t('page.calculator.across', { unit: volt }),
    up: t('page.calculator.up', { unit: ampere }),
    sentence: t('page.calculator.plot', {
      current: prefixed(figures.shortCircuitCurrentA, 'A'), voltage: prefixed(figures.openCircuitVoltageV, 'V'), power,
    }),
  });
}
