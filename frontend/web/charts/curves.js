import { Chart, describe, onThemeChange } from './chart.js';
import { keyHeight, lineKey } from './lineKey.js';
import { paintOf } from './paint.js';
import { rangeFromZero } from './scale.js';

/** Levels that lie over each other are told apart by line and colour alike, so that either alone would do. */
const STYLES = [
  { paint: 'ink', dash: [] },
  { paint: 'act', dash: [9, 4] },
  { paint: 'soft', dash: [2, 4] },
  { paint: 'ink', dash: [10, 3, 2, 3] },
];

/** How many levels can be told apart. */
export const MOST_STYLES = STYLES.length;

/** The dashes of a level's line, for a legend beside the picture. */
export const dashOf = style => STYLES[style].dash.join(' ');

/** What colour it has there. */
export const paintNameOf = style => STYLES[style].paint;

/**
 * Curves of many cells over each other.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{x: number, y: number}} Point
 * @typedef {{points: Point[], style: ?number, strong: boolean}} Line `style` null: one of the crowd
 * @typedef {{lines: Line[], key: string[], across: string, up: string, sentence: string}} Picture `key`: what the styles stand for, in
 *   their order
 */
export function drawCurves(canvas) {
  let chart = null;
  let shown = null;

  function show(picture) {
    shown = picture;
    describe(canvas, picture.sentence);
    const paint = paintOf(canvas);
    const parts = { options: optionsOf(canvas, paint, picture), data: { datasets: picture.lines.map(line => dataOf(paint, line)) } };
    if (chart) Object.assign(chart, parts).update('none');
    else chart = new Chart(canvas, { type: 'scatter', ...parts, plugins: [lineKey] });
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

function dataOf(paint, { points, style, strong }) {
  const look = STYLES[style ?? 0];
  return {
    data: points,
    showLine: true,
    pointRadius: strong ? paint.size * 0.16 : 0,
    pointBorderWidth: 0,
    pointBackgroundColor: paint[look.paint],
    borderColor: style == null ? paint.line : paint[look.paint],
    borderDash: look.dash,
    borderWidth: strong ? paint.size / 7 : paint.size / 12,
    order: strong ? 0 : 1,
  };
}

function optionsOf(canvas, paint, { lines, key, across, up }) {
  const entries = key.map((text, style) => ({ text, colour: paint[STYLES[style].paint], dash: STYLES[style].dash }));
  const furthest = key => Math.max(0, ...lines.flatMap(({ points }) => points.map(point => point[key])));
  return {
    maintainAspectRatio: false,
    animation: false,
    events: [],
    layout: { padding: { top: paint.size * 0.4 + keyHeight(canvas, entries, paint), right: paint.size * 0.6 } },
    plugins: { lineKey: { entries } },
    scales: { x: axis(paint, across, rangeFromZero(furthest('x'))), y: axis(paint, up, rangeFromZero(furthest('y'))) },
  };
}

function axis({ soft, line, family, size }, text, range) {
  const font = { family, size: size * 0.85 };
  return {
    type: 'linear', ...range,
    title: { display: true, text, color: soft, font },
    border: { color: soft },
    grid: { color: line, tickLength: 0 },
    ticks: { color: soft, font, maxTicksLimit: 6, maxRotation: 0, padding: size * 0.3 },
  };
}
