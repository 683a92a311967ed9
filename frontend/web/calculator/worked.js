/** A worked calculation to redo by hand, and where its uncertainty comes from. */
import { fixed, plusMinus, spelled } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

export const workedSteps = steps => html`<ol class="bare steps">${steps.map(step)}</ol>`;

const step = ({ key, formula, substituted, result: value }) => html`<li><h3>${t(key)}</h3>
  <p class="formula">${spelled(formula)}</p><p class="formula soft">${spelled(substituted)}</p><p class="formula"><strong>= ${spelled(value)}</strong></p></li>`;

export const budgetShares = budget => html`<ul class="bare shares">${budget.map(share)}</ul>`;

const share = ({ input, value, unit, standardUncertainty, share: part }) => html`<li>
  <span>${t(input)} <span class="soft small">${plusMinus(value, standardUncertainty, unit)}</span></span>
  <span class="number">${fixed(part * 100, 0)} %</span>
  <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true"><rect class="all" width="100" height="4"/><rect class="part" width=${Math.max(0.5, part * 100)} height="4"/></svg></li>`;
