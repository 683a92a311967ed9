/** A figure as a dot in its 95 % interval on an axis from nought; where it was before, as a ring. */
import { html, nothing, svg } from '../kit/kit.js';

/** @param figure {value, low, high} @param before the same or null @param most where the axis ends */
export function span(figure, before, most) {
  const at = value => `${2 + 96 * Math.min(1, Math.max(0, value / most))}%`;
  return html`<svg class="span" aria-hidden="true">
    <line class="axis" x1="2%" x2="98%" y1="50%" y2="50%"/>
    <line class="zero" x1="2%" x2="2%" y1="15%" y2="85%"/>
    <line class="reach" x1=${at(figure.low)} x2=${at(figure.high)} y1="50%" y2="50%"/>
    ${before ? svg`<circle class="before" cx=${at(before.value)} cy="50%" r="6"/>` : nothing}
    <circle class="now" cx=${at(figure.value)} cy="50%" r="7"/>
  </svg>`;
}
