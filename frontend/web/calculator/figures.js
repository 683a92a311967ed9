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

/** @param rows [{name, figure, unit, before}]; `figure` null leaves the row out, `before` null shows no earlier value */
export function figureTable(rows) {
  const shown = rows.filter(({ figure }) => figure?.value != null);
  const compared = shown.some(({ before }) => before?.value != null);
  return html`<table class="figures"><caption class="unseen">${t('page.calculator.figures')}</caption>
    <thead><tr><th scope="col">${t('page.calculator.figure')}</th>
      ${compared ? html`<th scope="col" class="number">${t('page.calculator.before')}</th>` : nothing}
      <th scope="col" class="number">${t('page.calculator.value')}</th></tr></thead>
    <tbody>${shown.map(row => figureRow(row, compared))}</tbody></table>`;
}

function figureRow({ name, figure, unit, before, told = true }, compared) {
  const { value, low, high, unit: symbol } = textsOf(figure, unit);
  return html`<tr><th scope="row">${name}</th>
    ${compared ? html`<td class="number soft">${before?.value == null ? '' : amountOf(before, unit)}</td>` : nothing}
    <td class="number">${told ? html`<strong>${value} ${symbol}</strong>` : html`<span class="soft">${t('page.calculator.untold')}</span>`}
      ${told && low !== null ? html`<br><span class="soft small">${t('page.calculator.lowToHigh', { low, high })}</span>` : nothing}</td></tr>`;
}

/** "412 mV" */
export function amountOf(figure, unit) {
  const { value, unit: symbol } = textsOf(figure, unit);
  return `${value} ${symbol}`.trim();
}
