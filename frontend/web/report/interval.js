import { html, svg } from '../kit/kit.js';
import { plain } from '../core/format.js';
import { ticks } from './axis.js';

const [WIDTH, EDGE] = [300, 8];

/** A scale for values from 0 (or the lowest, where one lies below) to the highest. */
export function scaleOf(figures) {
  const marks = ticks(Math.max(...figures.map(({ high }) => high), 1e-9), 4);
  const low = Math.min(0, ...figures.map(figure => figure.low));
  const at = value => EDGE + ((value - low) / (marks.at(-1) - low)) * (WIDTH - 2 * EDGE);
  return { marks, at };
}

/** A figure as a dot on its 95 % interval. */
export const bar = ({ value, low, high }, { marks, at }) => html`<svg class="interval" viewBox="0 0 ${WIDTH} 20" aria-hidden="true">
  ${marks.map(mark => svg`<path class="grid" d="M${at(mark)} 0V20"/>`)}
  <path class="line" d="M${at(low)} 10H${at(high)}M${at(low)} 5V15M${at(high)} 5V15"/><circle cx=${at(value)} cy="10" r="4.5"/></svg>`;

/** The numbers below such bars. */
export const axis = ({ marks, at }) => html`<svg class="interval" viewBox="0 0 ${WIDTH} 20" aria-hidden="true">
  ${marks.map((mark, i) => svg`<text x=${at(mark)} y="14" text-anchor=${i === 0 ? 'start' : i === marks.length - 1 ? 'end' : 'middle'}>${plain(mark)}</text>`)}</svg>`;
