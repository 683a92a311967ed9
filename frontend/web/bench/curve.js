/** The latest load sweep as a small drawing: every point a dot, voltage to the right, current upwards. */
import { prefixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/kit.js';

const [WIDTH, HEIGHT, EDGE] = [320, 180, 12];

/** @param points [{voltageV, currentA}] of an accepted sweep; draws nothing from fewer than two */
export function curve(points) {
  if (points.length < 2) return nothing;
  const ordered = [...points].sort((a, b) => a.voltageV - b.voltageV);
  const [highestV, highestA] = [largest(ordered, 'voltageV'), largest(ordered, 'currentA')];
  const at = ({ voltageV, currentA }) => [
    EDGE + (voltageV / highestV) * (WIDTH - 2 * EDGE),
    HEIGHT - EDGE - (currentA / highestA) * (HEIGHT - 2 * EDGE),
  ];
  const marks = ordered.map(at);
  return html`<figure class="curve">
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${t('page.bench.curve', { points: points.length })}>
      <path class="axes" d="M${EDGE} ${EDGE}V${HEIGHT - EDGE}H${WIDTH - EDGE}"/>
      <polyline points=${marks.map(mark => mark.join(',')).join(' ')}/>
      ${marks.map(([x, y]) => svg`<circle cx=${x} cy=${y} r="4"/>`)}
    </svg>
    <figcaption class="soft small">${t('page.bench.curveCaption', { volts: prefixed(highestV, 'V'), amperes: prefixed(highestA, 'A') })}</figcaption>
  </figure>`;
}

/** The scale's end; 1 where there is nothing to scale by. */
const largest = (points, key) => Math.max(...points.map(point => Math.abs(point[key]))) || 1;
