import { bestPoint } from './bestPoint.js';
import { Chart, describe, onThemeChange } from './chart.js';
import { paintOf } from './paint.js';
import { steadyRange } from './scale.js';

/**
 * Current against voltage: measured points as rings, the curve as a line, an earlier curve dashed behind it, and the
 * rectangle of the greatest power.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{x: number, y: number}} Point
 * @typedef {{dots: Point[], line: Point[], earlier: Point[], best: ?Point, bestText: string, across: string, up: string,
 *   sentence: string}} Picture in the units that `across` and `up` name
 */
export function drawCurve(canvas) {
  let chart = null;
  let shown = null;
  let ranges = {};

  function show(picture) {
    ranges = rangesOf(picture, shown?.across === picture.across && shown?.up === picture.up ? ranges : {});
    shown = picture;
    describe(canvas, picture.sentence);
    const paint = paintOf(canvas);
    const parts = { options: optionsOf(paint, picture, ranges), data: { datasets: dataOf(paint, picture) } };
    if (chart) Object.assign(chart, parts).update('none');
    else chart = new Chart(canvas, { type: 'scatter', ...parts, plugins: [bestPoint] });
  }

  const stopWatching = onThemeChange(() => shown && show(shown));
  return {
    show,
    end() {
      stopWatching();
      chart?.destroy();
    },
  };
}

function rangesOf({ dots, line, earlier }, { x, y }) {
  const points = [...dots, ...line, ...earlier];
  const furthest = key => Math.max(0, ...points.map(point => point[key]));
  return { x: steadyRange(furthest('x'), x), y: steadyRange(furthest('y'), y) };
}

function dataOf(paint, { dots, line, earlier }) {
  const width = paint.size / 6;
  return [
    { data: dots, pointRadius: paint.size * 0.3, pointBorderWidth: width * 0.8, borderColor: paint.ink, backgroundColor: paint.ground },
    { data: line, showLine: true, pointRadius: 0, borderColor: paint.act, borderWidth: width },
    { data: earlier, showLine: true, pointRadius: 0, borderColor: paint.soft, borderWidth: width * 0.7, borderDash: [6, 5] },
  ];
}

function optionsOf(paint, { best, bestText, across, up }, ranges) {
  return {
    maintainAspectRatio: false,
    animation: false,
    events: [],
    layout: { padding: { top: paint.size * 0.4, right: paint.size * 0.6 } },
    plugins: { bestPoint: { best, text: bestText } },
    scales: { x: axis(paint, across, ranges.x), y: axis(paint, up, ranges.y) },
  };
}

function axis({ soft, line, ink, family, size }, text, range) {
  const font = { family, size: size * 0.9 };
  return {
    type: 'linear', ...range,
    title: { display: true, text, color: ink, font },
    border: { color: soft },
    grid: { color: line, tickLength: 0 },
    ticks: { color: soft, font, maxTicksLimit: 6, maxRotation: 0, padding: size * 0.3 },
  };
}
