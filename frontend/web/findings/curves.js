import { MOST_STYLES, dashOf, drawCurves, paintNameOf } from '../charts/curves.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/kit.js';
import { curvesOf, downloads } from './downloads.js';

const drawn = new WeakMap();

/**
 * The measured curves of the cells looked at, told apart by the level of one parameter; `level` chosen stands out, null: all do.
 */
export function curves({ one, cells, measured, level, words, choose, title }) {
  const lines = linesOf(one, cells, measured);
  const counting = cells.filter(({ standing }) => standing === 'counts').length;
  return html`<div class="flow curves"><h3>${t('page.findings.curves', { parameter: words.parameter(one.parameter) })}</h3>
    ${lines.length === 0 ? html`<p class="soft">${t('page.findings.noCurves')}</p>` : html`<figure class="card">
      ${legend(one, lines, level, words, choose)}
      <div class="plot"><canvas></canvas></div>
      <figcaption><p class="soft small">${t('page.findings.curvesCaption', { curves: lines.length, counting })}</p>
        ${downloads({ name: `curves-${one.parameter}`, title: `${t('page.findings.curves', { parameter: title })}`, data: () => curvesOf(lines, one.parameter) })}</figcaption>
    </figure>`}
  </div>`;
}

/** After the page is drawn. */
export function drawCurvesOf(canvas, { one, cells, measured, level, words }) {
  if (!canvas) return;
  if (!drawn.has(canvas)) drawn.set(canvas, drawCurves(canvas));
  const lines = linesOf(one, cells, measured);
  const levels = levelsOf(one, lines);
  drawn.get(canvas).show({
    lines: lines.map(line => ({ points: line.points, ...lookOf(levels.indexOf(line.level), level == null ? null : levels.indexOf(level), levels.length) })),
    across: t('page.findings.voltage'),
    up: t('page.findings.currentDensity'),
    key: level == null && levels.length <= MOST_STYLES ? levels.map(each => words.level(one.parameter, each)) : level == null ? [] : [words.level(one.parameter, level)],
    sentence: t('page.findings.curves', { parameter: words.parameter(one.parameter) }),
  });
}

/** Where all cannot be told apart, none is, until one is chosen. */
function lookOf(index, chosen, count) {
  if (chosen != null) return index === chosen ? { style: 0, strong: true } : { style: null, strong: false };
  return { style: count <= MOST_STYLES ? index : 0, strong: false };
}

/** In mV and µA/cm², since 1 A/m² is 100 µA/cm². */
function linesOf(one, cells, measured) {
  const levels = new Map(cells.filter(({ standing }) => standing === 'counts')
    .map(cell => [cell.cellId, cell.levels.find(({ parameter }) => parameter === one.parameter)?.level]));
  return measured.flatMap(({ cellId, label, points }) => (levels.get(cellId) == null ? [] : [{
    label,
    level: levels.get(cellId),
    points: points.map(({ voltageV, currentDensityAm2 }) => ({ x: 1000 * voltageV, y: 100 * currentDensityAm2 })),
  }]));
}

/** In the order of the parameter. */
const levelsOf = (one, lines) => {
  const met = new Set(lines.map(({ level }) => level));
  return one.levels.map(({ level }) => level).filter(level => met.has(level));
};

function legend(one, lines, chosen, words, choose) {
  const levels = levelsOf(one, lines);
  const told = levels.length <= MOST_STYLES;
  const count = level => lines.filter(line => line.level === level).length;
  return html`<div class="legend" role="group" aria-label=${t('page.findings.curvesLegend')}>
    <button type="button" class="pick" aria-pressed=${chosen == null} @click=${() => choose(null)}>${t('page.findings.allLevels')}</button>
    ${levels.map((level, index) => html`<button type="button" class="pick" aria-pressed=${level === chosen} @click=${() => choose(level)}>
      ${told && chosen == null ? sample(index) : nothing}${words.level(one.parameter, level)} <span class="soft">${count(level)}</span></button>`)}
  </div>`;
}

const sample = index => html`<svg viewBox="0 0 32 8" width="32" height="8" aria-hidden="true">${svg`<path d="M0 4H32" class=${paintNameOf(index)} stroke-dasharray=${dashOf(index)}/>`}</svg>`;
