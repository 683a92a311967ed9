import { Chart, describe, onThemeChange } from './chart.js';
import { drawMark } from './drawMark.js';
import { paintOf } from './paint.js';
import { rangeAround } from './scale.js';

/** Plug-in: between two readings the light is taken to change evenly; after the last it is held, drawn dashed. */
const steadily = {
  id: 'steadily',

  afterDatasetsDraw(chart) {
    const paint = paintOf(chart.canvas);
    const points = chart.getDatasetMeta(0).data;
    chart.ctx.save();
    chart.ctx.strokeStyle = paint.soft;
    chart.ctx.lineWidth = 2;
    points.slice(1).forEach((point, at) => line(chart.ctx, points[at], point));
    chart.ctx.setLineDash([4, 5]);
    if (points.length > 0) line(chart.ctx, points.at(-1), { x: chart.chartArea.right, y: points.at(-1).y });
    chart.ctx.restore();
    for (const { x, y } of points) drawMark(chart.ctx, DISC, { x, y, radius: paint.size * 0.36 }, { ...paint, dark: true });
  },
};

/** Light that changes less than this over the day draws as nearly level. */
const LEAST_SHARE = 0.25;

/** A held reading is drawn on for this long at most. */
const HELD_MS = 3_600_000;

/** The mark of readings: a disc; a station is no team. */
const DISC = 0;

/**
 * A station's light over time.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{readings: {at: number, value: number}[], now: number, clock: (at: number) => string, sentence: string}} Picture
 *   `at` and `now` in milliseconds, `value` in W/m2, oldest first
 */
export function drawDrift(canvas) {
  let chart = null;
  let shown = null;

  function show(picture) {
    shown = picture;
    describe(canvas, picture.sentence);
    const options = optionsOf(paintOf(canvas), picture);
    const data = { datasets: [{ data: picture.readings.map(({ at, value }) => ({ x: at, y: value })) }] };
    if (chart) Object.assign(chart, { options, data }).update('none');
    else chart = new Chart(canvas, { type: 'scatter', data, options, plugins: [steadily] });
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

function optionsOf({ soft, line, family, size }, { readings, now, clock }) {
  const ticks = { color: soft, font: { family, size: size * 0.8 }, maxRotation: 0 };
  return {
    maintainAspectRatio: false,
    animation: false,
    events: [],
    clip: false,
    elements: { point: { radius: 0 } },
    scales: {
      x: {
        type: 'linear', min: readings[0].at, max: Math.max(readings.at(-1).at, Math.min(now, readings.at(-1).at + HELD_MS)),
        border: { color: line }, grid: { display: false },
        ticks: { ...ticks, maxTicksLimit: 4, callback: clock },
      },
      y: {
        type: 'linear', ...rangeAround(readings.map(({ value }) => value), LEAST_SHARE),
        border: { display: false }, grid: { color: line, tickLength: 0 },
        ticks: { ...ticks, maxTicksLimit: 4, includeBounds: false, padding: 6 },
      },
    },
  };
}

function line(context, from, to) {
  context.beginPath();
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
  context.stroke();
}
