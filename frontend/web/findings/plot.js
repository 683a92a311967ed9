import { drawLevels } from '../charts/levels.js';
import { rangeAround } from '../charts/scale.js';
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';

const MOST_TICKS = 8;
const drawn = new WeakMap();

/** Draws one parameter's cells on a canvas of the page. */
export function drawFinding(canvas, one, cells, words) {
  canvas.parentElement.style.setProperty('--levels', one.kind === 'sort' ? one.levels.length : Math.min(one.levels.length, 24));
  canvas.parentElement.classList.toggle('sorts', one.kind === 'sort');
  if (!drawn.has(canvas)) drawn.set(canvas, drawLevels(canvas));
  drawn.get(canvas).show(pictureOf(one, cells, words));
}

export function pictureOf(one, cells, words) {
  const place = one.kind === 'number' ? Number : key => one.levels.findIndex(({ level }) => level === key);
  const shown = dotsOf(one.parameter, cells).filter(({ standing }) => standing !== 'waiting');
  const up = heightsFor(shown, words.measure.scale);
  return {
    dots: shown.map(dot => ({
      x: place(dot.level),
      y: dot.figure ? up(dot.figure.value) : null,
      mark: dot.mark ?? 0,
      label: dot.label,
      failed: dot.standing === 'failed',
    })),
    medians: one.levels.filter(({ median, n }) => median != null && (one.kind === 'sort' || n > 1 || one.levels.length <= MOST_TICKS))
      .map(level => medianOf(level, place, up, words.value(level.median))),
    across: one.kind === 'number' ? numbers(one, shown, words) : sorts(one, words),
    upTitle: words.measure.title,
    failedTitle: t('page.findings.failed'),
    sentence: t('page.findings.picture', { parameter: words.parameter(one.parameter), what: words.measure.title, count: shown.length }),
  };
}

/** The cells where a parameter was recorded, each with its level. */
export const dotsOf = (parameter, cells) => cells.flatMap(cell => {
  const at = cell.levels.find(each => each.parameter === parameter);
  return at ? [{ ...cell, level: at.level }] : [];
});

/** A scale of factors has no 0: a cell that gives nothing stands at half the least that any gives, as in the comparison. */
function heightsFor(shown, scale) {
  const positive = shown.map(({ figure }) => figure?.value / scale).filter(value => value > 0);
  const least = positive.length ? Math.min(...positive) / 2 : 1;
  return si => Math.max(si / scale, least);
}

function medianOf({ level, median, interval }, place, up, text) {
  return {
    x: place(level),
    y: up(median),
    text,
    ...(interval ? { low: up(interval.low), high: up(interval.high) } : {}),
  };
}

function sorts({ levels, parameter }, words) {
  return {
    min: -0.5,
    max: levels.length - 0.5,
    ticks: levels.map((each, value) => ({ value, label: words.level(parameter, each.level).split(' ') })),
    reach: 0.42,
    title: words.parameter(parameter),
  };
}

function numbers({ levels, parameter }, shown, words) {
  const symbol = words.symbol(parameter);
  const name = words.parameter(parameter);
  const values = [...new Set([...levels, ...shown].map(({ level }) => Number(level)))].sort((a, b) => a - b);
  const gaps = values.slice(1).map((value, index) => value - values[index]);
  const { min, max } = rangeAround(values, 0.1);
  const reach = Math.min(...gaps, (max - min) / 4) * 0.42;
  return {
    min: Math.min(min, values[0] - reach * 1.7),
    max: Math.max(max, values.at(-1) + reach * 1.3),
    ticks: thinned(values).map(value => ({ value, label: plain(value) })),
    reach,
    title: symbol ? `${name}, ${symbol}` : name,
  };
}

function thinned(values) {
  const step = Math.ceil(values.length / MOST_TICKS);
  return values.filter((_, index) => index % step === 0);
}
