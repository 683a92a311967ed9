import { drawLevels } from '../charts/levels.js';
import { rangeAround } from '../charts/scale.js';
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';

const MOST_TICKS = 8;
const drawn = new WeakMap();

/** Draws one parameter's cells on a canvas of the page. */
export function drawFinding(canvas, one, cells, words) {
  canvas.parentElement.style.setProperty('--levels', one.levels.length);
  canvas.parentElement.classList.toggle('sorts', one.kind === 'sort');
  if (!drawn.has(canvas)) drawn.set(canvas, drawLevels(canvas));
  drawn.get(canvas).show(pictureOf(one, cells, words));
}

export function pictureOf(one, cells, words) {
  const place = one.kind === 'number' ? Number : key => one.levels.findIndex(({ level }) => level === key);
  const shown = dotsOf(one.parameter, cells).filter(({ standing }) => standing !== 'waiting');
  return {
    dots: shown.map(dot => ({
      x: place(dot.level),
      y: dot.powerDensityWm2 ? dot.powerDensityWm2.value / MICROWATT_PER_CM2 : null,
      mark: dot.mark,
      label: dot.label,
      failed: dot.standing === 'failed',
    })),
    medians: one.levels.filter(({ median }) => median != null).map(level => medianOf(level, place)),
    across: one.kind === 'number' ? numbers(one, words) : sorts(one, words),
    upTitle: t('page.findings.power'),
    failedTitle: t('page.findings.failed'),
    sentence: t('page.findings.picture', { parameter: words.parameter(one.parameter), count: shown.length }),
  };
}

/** The cells where a parameter was recorded, each with its level. */
export const dotsOf = (parameter, cells) => cells.flatMap(cell => {
  const at = cell.levels.find(each => each.parameter === parameter);
  return at ? [{ ...cell, level: at.level }] : [];
});

function medianOf({ level, median, interval }, place) {
  const value = median / MICROWATT_PER_CM2;
  return {
    x: place(level),
    y: value,
    text: plain(Number(value.toPrecision(2))),
    ...(interval ? { low: interval.low / MICROWATT_PER_CM2, high: interval.high / MICROWATT_PER_CM2 } : {}),
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

function numbers({ levels, parameter }, words) {
  const symbol = words.symbol(parameter);
  const name = words.parameter(parameter);
  const values = levels.map(({ level }) => Number(level)).sort((a, b) => a - b);
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
