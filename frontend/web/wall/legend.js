import { t } from '../core/texts.js';
import { html, svg } from '../kit/element.js';

/** What the drawn things mean, beside each its picture. */
export function legend() {
  return html`<span class="legend">${entry(RING, 'cell')}${entry(FAILED, 'failedCell')}${entry(WHISKER, 'whisker')}</span>`;
}

function entry(picture, key) {
  return html`<span><svg viewBox="0 0 24 24" fill="none" stroke="currentColor" stroke-width="3" stroke-linecap="round"
    aria-hidden="true">${picture}</svg>${t(`page.wall.legend.${key}`)}</span>`;
}

const RING = svg`<circle cx="12" cy="12" r="6.5"/>`;
const FAILED = svg`<circle cx="12" cy="12" r="7"/><path d="m7 17 10-10"/>`;
const WHISKER = svg`<path d="M2 12h20M2 7v10M22 7v10"/>`;
