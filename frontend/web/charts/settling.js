import { Chart, describe, onThemeChange } from './chart.js';
import { paintOf } from './paint.js';
import { rangeAround } from './scale.js';

/** A cell that changes less than this draws as nearly level. */
const LEAST_SHARE = 0.2;

/**
 * A settling cell: readings as rings, the fitted course as a line up to when it is worth reading again.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{x: number, y: number}} Point `x` in milliseconds, `y` in per cent of the latest reading
 * @typedef {{dots: Point[], line: Point[], clock: (at: number) => string, up: string, sentence: string}} Picture
 */
export function drawSettling(canvas) {
  let chart = null;
  let shown = null;

  function show(picture) {
    shown = picture;
    describe(canvas, picture.sentence);
    const paint = paintOf(canvas);
    const parts = { options: optionsOf(paint, picture), data: { datasets: dataOf(paint, picture) } };
    if (chart) Object.assign(chart, parts).update('none');
    else chart = new Chart(canvas, { type: 'scatter', ...parts });
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

const dataOf = (paint, { dots, line }) => [
  { data: dots, pointRadius: paint.size * 0.32, pointBorderWidth: 2, borderColor: paint.ink, backgroundColor: paint.ground },
  { data: line, showLine: true, pointRadius: 0, borderColor: paint.act, borderWidth: 2 },
];

function optionsOf({ ink, soft, line: grid, family, size }, { dots, line, clock, up }) {
  const ticks = { color: soft, font: { family, size: size * 0.85 }, maxRotation: 0 };
  const points = [...dots, ...line];
  return {
    maintainAspectRatio: false,
    animation: false,
    events: [],
    clip: false,
    layout: { padding: { top: size * 0.5, right: size } },
    scales: {
      x: {
        type: 'linear', min: dots[0].x, max: Math.max(...points.map(({ x }) => x)),
        border: { color: soft }, grid: { display: false }, ticks: { ...ticks, maxTicksLimit: 4, callback: clock },
      },
      y: {
        type: 'linear', ...rangeAround(points.map(({ y }) => y), LEAST_SHARE),
        title: { display: true, text: up, color: ink, font: { family, size: size * 0.85 } },
        border: { display: false }, grid: { color: grid, tickLength: 0 },
        ticks: { ...ticks, maxTicksLimit: 4, includeBounds: false, padding: 6, callback: value => `${value} %` },
      },
    },
  };
}
