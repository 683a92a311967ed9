import { fixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/kit.js';

const MOST_SIGNS = 24;

/** Per level: the middle cell's power and how many of the cells made came through, one sign per cell. */
export function levelTable(one, words) {
  return html`<table class="levels">
    <caption class="unseen">${t('page.findings.levels')}</caption>
    <thead><tr>
      <th scope="col">${words.parameter(one.parameter)}</th>
      <th scope="col" class="number">${words.measure.middle}</th>
      <th scope="col">${t('page.findings.yield')}</th>
    </tr></thead>
    <tbody>${one.levels.map(level => row(level, one.parameter, words))}</tbody>
  </table>`;
}

function row(level, parameter, words) {
  const { made, n, failed, median, interval, cameInterval } = level;
  return html`<tr>
    <th scope="row">${words.level(parameter, level.level)}</th>
    <td class="number">${median == null ? '–' : words.value(median)}
      ${interval ? html`<br><span class="soft small">${words.value(interval.low)} – ${words.value(interval.high)}</span>` : nothing}</td>
    <td><span class="came">${made <= MOST_SIGNS ? signs(level) : nothing}<span>${t('page.findings.came', { made, counted: n, failed })}
      ${cameInterval ? html`<br><span class="soft small">${t('page.findings.cameInterval', { low: percent(cameInterval.low), high: percent(cameInterval.high) })}</span>` : nothing}</span></span></td>
  </tr>`;
}

const percent = share => fixed(100 * share, 0);

function signs({ made, n, failed }) {
  const kinds = [...Array(n).fill(COUNTED), ...Array(failed).fill(FAILED), ...Array(made - n - failed).fill(WAITING)];
  return html`<svg viewBox="0 0 ${made * 20} 20" width=${made * 20} height="20" aria-hidden="true">${kinds.map((kind, at) =>
    svg`<g transform="translate(${at * 20} 0)">${kind}</g>`)}</svg>`;
}

const COUNTED = svg`<circle cx="10" cy="10" r="6.5" class="counted"/>`;
const FAILED = svg`<circle cx="10" cy="10" r="6" class="line"/><path d="m5.8 14.2 8.4-8.4" class="line"/>`;
const WAITING = svg`<circle cx="10" cy="10" r="6" class="line dashed"/>`;
