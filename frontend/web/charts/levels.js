import { cellLabels } from './cellLabels.js';
import { Chart, describe, onThemeChange } from './chart.js';
import { medianLines } from './medianLines.js';
import { paintOf } from './paint.js';
import { isLogTick, rangeInDecades } from './scale.js';
import { sideways } from './sideways.js';
import { teamMarks } from './teamMarks.js';

/**
 * Every cell as a dot over its level of a build parameter, on a logarithmic scale since ratios matter; cells that failed
 * stand in a strip of their own below it.
 *
 * @param {HTMLCanvasElement} canvas in a box that gives it its size
 * @returns {{show: (picture: Picture) => void, end: () => void}}
 *
 * @typedef {{x: number, y: number, mark: number, label: string, failed: boolean}} Dot y is not read when failed
 * @typedef {{min: number, max: number, ticks: {value: number, label: string | string[]}[], reach: number, title: string}} Across
 *   the x axis; `reach`: half the room of a level
 * @typedef {{dots: Dot[], medians: {x: number, y: number, text: string, low?: number, high?: number}[], across: Across, upTitle: string,
 *   failedTitle: string, sentence: string}} Picture
 */
export function drawLevels(canvas) {
  let chart = null;
  let shown = null;

  function show(picture) {
    shown = picture;
    describe(canvas, picture.sentence);
    const options = optionsOf(paintOf(canvas), picture);
    const data = { datasets: dataOf(picture.dots) };
    if (chart) Object.assign(chart, { options, data }).update('none');
    else chart = new Chart(canvas, { type: 'scatter', data, options, plugins: [medianLines, sideways, teamMarks, cellLabels] });
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

/** Failed dots that stand side by side in a level; further ones stand in rows of their own, so that none hides another. */
const SIDE_BY_SIDE = 3;
const MOST_ROWS = 4;

/** With more dots than this a dot is small, so that a crowd shows its shape. */
const CROWD = 200;
const SMALL = 0.45;

function failedRows(dots) {
  const counts = new Map();
  for (const { x, failed } of dots) if (failed) counts.set(x, (counts.get(x) ?? 0) + 1);
  return Math.min(MOST_ROWS, Math.ceil(Math.max(1, ...counts.values()) / SIDE_BY_SIDE));
}

/** Heights in [-1, 1], one row after another within each level. */
function inRows(failed, rows) {
  const placed = new Map();
  return failed.map(dot => {
    const at = placed.get(dot.x) ?? 0;
    placed.set(dot.x, at + 1);
    return { ...dot, y: (2 * (at % rows) + 1) / rows - 1 };
  });
}

function dataOf(dots) {
  const failed = inRows(dots.filter(dot => dot.failed), failedRows(dots));
  const worked = { yAxisID: 'y', data: dots.filter(dot => !dot.failed) };
  return failed.length === 0 ? [worked] : [worked, { yAxisID: 'failed', data: failed }];
}

function optionsOf(paint, { dots, medians, across, upTitle, failedTitle }) {
  const anyFailed = dots.some(dot => dot.failed);
  const scale = dots.length > CROWD ? SMALL : 1;
  return {
    maintainAspectRatio: false,
    animation: false,
    events: [],
    elements: { point: { radius: 0 } },
    clip: false,
    layout: { padding: { top: paint.size } },
    plugins: {
      sideways: { reach: across.reach, scale },
      medianLines: { medians, reach: across.reach * 0.85 },
      teamMarks: { radius: 0.5 * scale },
    },
    scales: {
      x: acrossAxis(paint, across),
      ...(anyFailed ? { failed: failedAxis(paint, failedTitle, failedRows(dots)) } : {}), // stacked from the bottom up
      y: upAxis(paint, dots, upTitle),
    },
  };
}

function acrossAxis(paint, { min, max, ticks, title }) {
  const labels = new Map(ticks.map(({ value, label }) => [value, label]));
  return {
    type: 'linear', min, max,
    title: titleLook(paint, title),
    border: { color: paint.soft },
    grid: { display: false },
    afterBuildTicks: axis => { axis.ticks = ticks.map(({ value }) => ({ value })); },
    ticks: { ...tickLook(paint), color: paint.ink, callback: value => labels.get(value), autoSkip: false, maxRotation: 0 },
  };
}

function upAxis(paint, dots, title) {
  const range = rangeInDecades(dots.filter(dot => !dot.failed).map(dot => dot.y));
  return {
    type: 'logarithmic', ...range,
    stack: 'up', stackWeight: 6,
    title: titleLook(paint, title),
    border: { display: false },
    grid: { color: paint.line, tickLength: 0 },
    afterBuildTicks: axis => { axis.ticks = axis.ticks.filter(({ value }) => isLogTick(value, range)); },
    ticks: { ...tickLook(paint), callback: value => String(Number(value.toPrecision(2))) },
  };
}

function failedAxis(paint, title, rows) {
  return {
    type: 'linear', min: -1, max: 1,
    stack: 'up', stackWeight: rows === 1 ? 1 : 0.7 * rows, offset: rows === 1,
    border: { display: false },
    grid: { display: false },
    afterBuildTicks: axis => { axis.ticks = [{ value: 0 }]; },
    ticks: { ...tickLook(paint), color: paint.ink, callback: () => title },
  };
}

const tickLook = ({ soft, family, size }) => ({ color: soft, font: { family, size: size * 0.85 }, padding: size * 0.3 });

const titleLook = ({ soft, family, size }, text) => ({ display: true, text, color: soft, font: { family, size: size * 0.85 } });
