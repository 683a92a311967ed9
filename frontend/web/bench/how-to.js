/** How a step is done: three short lines that can be read with one free hand. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

const LINES = ['first', 'then', 'last'];

/** @param step key of a stage or kind of a reading */
export const howTo = step => html`<ol class="how-to">${LINES.map(line => html`<li>${t(`page.bench.howTo.${step}.${line}`)}</li>`)}</ol>`;
