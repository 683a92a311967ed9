/** Figures of an answer, each with its interval and, once something was changed, what it was before. */
import { figureTexts, prefixed, scaleOf } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** A figure of an answer whose uncertainties stand beside the values. */
export const figureOf = (answer, name) => ({ value: answer[name], ...answer.uncertainties?.[name] });

/** {value, low, high, unit} as texts, in the unit that fits the size of the value. */
export function textsOf(figure, unit) {
  const [scale, symbol] = scaleOf(Math.abs(figure.value), unit);
  if (figure.standardUncertainty > 0) return figureTexts(figure, scale, symbol);
  const [value, shown = ''] = prefixed(figure.value, unit).split(' ');
  return { value, low: null, high: null, unit: shown };
}

/** @param rows [{name, figure, unit, before, told}]; a row without a figure is left out, `told` false: not to be known */
export function figureTable(rows) {
  const shown = rows.filter(({ figure }) => figure?.value != null);
  const ranged = shown.some(({ figure }) => figure.standardUncertainty > 0);
  return html`<table class="figures"><caption class="unseen">${t('page.calculator.figures')}</caption>
    <thead><tr><th scope="col">${t('page.calculator.figure')}</th>
      <th scope="col" class="number">${t(ranged ? 'page.calculator.valueRange' : 'page.calculator.value')}</th></tr></thead>
    <tbody>${shown.map(figureRow)}</tbody></table>`;
}

function figureRow({ name, figure, unit, before, told = true }) {
  const { value, low, high, unit: symbol } = textsOf(figure, unit);
  return html`<tr><th scope="row">${name}</th>
    <td class="number">${told ? html`<strong>${value} ${symbol}</strong>` : html`<span class="soft">${t('page.calculator.untold')}</span>`}
      ${told && low !== null ? html`<br><span class="soft small">${t('page.calculator.lowToHigh', { low, high })}</span>` : nothing}
      ${before?.value == null ? nothing : html`<br><span class="soft small">${t('page.calculator.before', { amount: amountOf(before, unit) })}</span>`}</td></tr>`;
}

/** The same of figures that are texts already: {name, now: {value, low, high, unit}, before: the same or null}. */
export function textTable(rows) {
  return html`<table class="figures"><caption class="unseen">${t('page.calculator.figures')}</caption>
    <thead><tr><th scope="col">${t('page.calculator.figure')}</th><th scope="col" class="number">${t('page.calculator.valueRange')}</th></tr></thead>
    <tbody>${rows.map(textRow)}</tbody></table>`;
}

const textRow = ({ name, now: { value, low, high, unit }, before }) => html`<tr><th scope="row">${name}</th>
  <td class="number"><strong>${`${value} ${unit}`.trim()}</strong><br><span class="soft small">${t('page.calculator.lowToHigh', { low, high })}</span>
    ${before ? html`<br><span class="soft small">${t('page.calculator.before', { amount: `${before.value} ${before.unit}`.trim() })}</span>` : nothing}</td></tr>`;

/** "412 mV" */
export function amountOf(figure, unit) {
  const { value, unit: symbol } = textsOf(figure, unit);
  return `${value} ${symbol}`.trim();
}
