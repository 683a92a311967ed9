import { drawLevels } from '../charts/levels.js';
import { rangeAround } from '../charts/scale.js';
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';

const MOST_TICKS = 8;
const drawn = new WeakMap();

/** Draws a finding's cells on the page's canvas. */
export function drawFinding(canvas, finding, words) {
  canvas.parentElement.style.setProperty('--levels', finding.levels.length);
  canvas.parentElement.classList.toggle('sorts', finding.kind === 'sort');
  if (!drawn.has(canvas)) drawn.set(canvas, drawLevels(canvas));
  drawn.get(canvas).show(pictureOf(finding, words));
}

export function pictureOf(finding, words) {
  const place = finding.kind === 'number' ? Number : key => finding.levels.findIndex(({ level }) => level === key);
  const shown = finding.dots.filter(dot => dot.standing !== 'waiting');
  return {
    dots: shown.map(dot => ({
      x: place(dot.level),
      y: dot.powerDensityWm2 ? dot.powerDensityWm2.value / MICROWATT_PER_CM2 : null,
      mark: dot.mark,
      label: dot.label,
      failed: dot.standing === 'failed',
    })),
    medians: finding.levels.filter(level => level.medianPowerDensityWm2 != null).map(level => medianOf(level, place)),
    across: finding.kind === 'number' ? numbers(finding, words) : sorts(finding, words),
    upTitle: t('page.findings.power'),
    failedTitle: t('page.findings.failed'),
    sentence: t('page.findings.picture', { parameter: words.parameter, count: shown.length }),
  };
}

function medianOf({ level, medianPowerDensityWm2: median }, place) {
  const value = median / MICROWATT_PER_CM2;
  return { x: place(level), y: value, text: plain(Number(value.toPrecision(2))) };
}

function sorts({ levels }, { level, parameter }) {
  return {
    min: -0.5,
    max: levels.length - 0.5,
    ticks: levels.map((each, value) => ({ value, label: level(each.level).split(' ') })),
    reach: 0.42,
    title: parameter,
  };
}

function numbers({ levels }, { symbol, parameter }) {
  const values = levels.map(({ level }) => Number(level)).sort((a, b) => a - b);
  const gaps = values.slice(1).map((value, index) => value - values[index]);
  const { min, max } = rangeAround(values, 0.1);
  const reach = Math.min(...gaps, (max - min) / 6) * 0.42;
  return {
    min: Math.min(min, values[0] - reach * 1.7),
    max: Math.max(max, values.at(-1) + reach * 1.3),
    ticks: thinned(values).map(value => ({ value, label: plain(value) })),
    reach,
    title: symbol ? `${parameter}, ${symbol}` : parameter,
  };
}

function thinned(values) {
  const step = Math.ceil(values.length / MOST_TICKS);
  return values.filter((_, index) => index % step === 0);
}
