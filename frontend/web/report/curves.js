import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/kit.js';
import { ticks } from './axis.js';

const [WIDTH, HEIGHT] = [340, 220];
const [LEFT, RIGHT, TOP, BOTTOM] = [46, 14, 10, 40];
const DASHES = 4;

/** Load sweeps of some cells [{label, sweep}] in one drawing, told apart by their dashes and their letters; sharp in print. */
export function curves(cells, title) {
  const swept = cells.filter(({ sweep }) => sweep.length > 1);
  if (swept.length === 0) return nothing;
  const points = swept.flatMap(({ sweep }) => sweep);
  const volts = ticks(Math.max(...points.map(({ voltageV }) => voltageV * 1e3), 1));
  const amperes = ticks(Math.max(...points.map(({ currentA }) => currentA * 1e6), 1), 4);
  const x = voltageV => LEFT + (voltageV * 1e3 / volts.at(-1)) * (WIDTH - LEFT - RIGHT);
  const y = currentA => HEIGHT - BOTTOM - (currentA * 1e6 / amperes.at(-1)) * (HEIGHT - TOP - BOTTOM);
  return html`<figure class="curves"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${t('page.report.curvesOf', { what: title, cells: swept.length })}>
    ${amperes.map(mark => svg`<path class="grid" d="M${LEFT} ${y(mark / 1e6)}H${WIDTH - RIGHT}"/><text x=${LEFT - 6} y=${y(mark / 1e6) + 4} text-anchor="end">${plain(mark)}</text>`)}
    ${volts.map(mark => svg`<text x=${x(mark / 1e3)} y=${HEIGHT - BOTTOM + 16} text-anchor="middle">${plain(mark)}</text>`)}
    <path class="axes" d="M${LEFT} ${TOP}V${HEIGHT - BOTTOM}H${WIDTH - RIGHT}"/>
    <text x=${(LEFT + WIDTH - RIGHT) / 2} y=${HEIGHT - 6} text-anchor="middle">${t('page.report.voltageAxis')}</text>
    <text transform="translate(11 ${(TOP + HEIGHT - BOTTOM) / 2}) rotate(-90)" text-anchor="middle">${t('page.report.currentAxis')}</text>
    ${swept.map(({ sweep }, i) => one([...sweep].sort((a, b) => a.voltageV - b.voltageV), i, x, y))}
  </svg><figcaption class="keys">${swept.map(({ label }, i) => html`<span>${key(i)} ${label}</span>`)}</figcaption></figure>`;
}

const one = (sweep, i, x, y) => svg`<g class="curve dash-${i % DASHES}">
  <polyline points=${sweep.map(({ voltageV, currentA }) => `${x(voltageV)},${y(currentA)}`).join(' ')}/>
  ${sweep.map(({ voltageV, currentA }) => svg`<circle cx=${x(voltageV)} cy=${y(currentA)} r="2.6"/>`)}</g>`;

const key = i => html`<svg class="key" viewBox="0 0 34 10" aria-hidden="true"><g class="curve dash-${i % DASHES}"><polyline points="1,5 33,5"/><circle cx="17" cy="5" r="2.6"/></g></svg>`;
