import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';
import { html, svg } from '../kit/kit.js';

/** Per level: the middle cell's power and how many of the cells made came through, one sign per cell. */
export function levelTable({ levels }, words) {
  return html`<table class="levels">
    <caption class="unseen">${t('page.findings.levels')}</caption>
    <thead><tr>
      <th scope="col">${words.parameter}</th>
      <th scope="col" class="number">${t('page.findings.median')}</th>
      <th scope="col">${t('page.findings.yield')}</th>
    </tr></thead>
    <tbody>${levels.map(level => row(level, words))}</tbody>
  </table>`;
}

function row(level, words) {
  const { made, counted, failed, medianPowerDensityWm2: median } = level;
  return html`<tr>
    <th scope="row">${words.level(level.level)}</th>
    <td class="number">${median == null ? '–' : plain(Number((median / MICROWATT_PER_CM2).toPrecision(2)))}</td>
    <td><span class="came">${signs(level)}<span>${t('page.findings.came', { made, counted, failed })}</span></span></td>
  </tr>`;
}

function signs({ made, counted, failed }) {
  const kinds = [...Array(counted).fill(COUNTED), ...Array(failed).fill(FAILED), ...Array(made - counted - failed).fill(WAITING)];
  return html`<svg viewBox="0 0 ${made * 20} 20" width=${made * 20} height="20" aria-hidden="true">${kinds.map((kind, at) =>
    svg`<g transform="translate(${at * 20} 0)">${kind}</g>`)}</svg>`;
}

const COUNTED = svg`<circle cx="10" cy="10" r="6.5" class="counted"/>`;
const FAILED = svg`<circle cx="10" cy="10" r="6" class="line"/><path d="m5.8 14.2 8.4-8.4" class="line"/>`;
const WAITING = svg`<circle cx="10" cy="10" r="6" class="line dashed"/>`;
