import { calm } from './calm.js';
import { cellDots } from './cellDots.js';
import { Chart, describe, onThemeChange } from './chart.js';
import { paintOf } from './paint.js';
import { rangeFromZero } from './scale.js';
import { teamMarks } from './teamMarks.js';
import { whiskers } from './whiskers.js';

const MOVE_MS = 280;

/**
 * One row per team, its figure as the team's mark along a shared axis, its 95 % interval as a line, its single cells as
 * rings. The axis starts at zero and stays; it only grows when something would leave it, or begins anew with another metric.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{key: string, mark: ?number, row: number, value: number, low: ?number, high: ?number, cells: ?number[]}} Dot
 *   `row` 0 is the top one; `mark` null: no figure yet, the cells alone
 * @typedef {{metric: string, dots: Dot[], rows: number, line: number, grid: boolean, axisHeight: number, sentence: string}} Picture
 *   `line`: where in its row a dot stands, 0 at the top, 1 at the bottom; `axisHeight` pixels below the rows
 */
export function drawIntervals(canvas) {
  const chart = new Chart(canvas, { type: 'scatter', data: { datasets: [{ data: [] }] }, plugins: [whiskers, cellDots, teamMarks] });
  let shown = null;
  let range = null;

  function show(picture, motion = calm() ? 'none' : undefined) {
    if (picture.metric !== shown?.metric) range = null;
    shown = picture;
    range = rangeFromZero(furthest(picture.dots), range);
    chart.options = optionsOf(paintOf(canvas), picture, range);
    chart.data.datasets[0].data = pointsOf(picture.dots);
    describe(canvas, picture.sentence);
    chart.update(motion);
  }

  const stopWatching = onThemeChange(() => shown && show(shown, 'none'));
  return {
    show,
    end() {
      stopWatching();
      chart.destroy();
    },
  };
}

/** In an order that does not change with the places, so that a dot keeps its index and moves. */
function pointsOf(dots) {
  const sameOrder = [...dots].sort((a, b) => a.key.localeCompare(b.key));
  return sameOrder.map(({ row, value, ...rest }) => ({ ...rest, x: value, y: row }));
}

function furthest(dots) {
  return Math.max(0, ...dots.flatMap(({ value, high, cells = [] }) => [value, high ?? 0, ...cells]));
}

function optionsOf(paint, { rows, line, grid, axisHeight }, range) {
  return {
    maintainAspectRatio: false,
    animation: { duration: MOVE_MS },
    events: [],
    layout: { padding: { left: paint.size * 0.6, right: paint.size * 0.6 } },
    elements: { point: { radius: 0 } },
    clip: false,
    plugins: { teamMarks: { radius: 0.5 } },
    scales: {
      x: { type: 'linear', ...range, ...axisLook(paint, grid), afterFit: axis => { axis.height = axisHeight; } },
      y: { type: 'linear', min: -line, max: rows - line, reverse: true, display: false },
    },
  };
}

function axisLook({ line, soft, family, size }, grid) {
  return {
    border: { display: false },
    grid: { display: grid, color: line, tickLength: 0, lineWidth: 1.5 },
    ticks: { color: soft, font: { family, size: size * 0.95 }, maxTicksLimit: 6, maxRotation: 0, padding: size * 0.3 },
  };
}
