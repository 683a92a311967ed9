/** A cell's result in words, with its interval, what is missing, and the calculation to redo by hand. */
import { cellAddress } from '../calculator/cell-address.js';
import { budgetShares, workedSteps } from '../calculator/worked.js';
import { currentDensityTexts, powerDensityTexts, voltageTexts, figureTexts } from '../core/format.js';
import { rankedTexts } from '../core/ranked.js';
import { has, remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

export function result(answer) {
  if (!answer) return nothing;
  return html`<section class="card flow result" aria-labelledby="result">
    <h2 id="result">${t('page.bench.result')}</h2>
    ${answer.powerDensityWm2 ? headline(answer) : nothing}
    ${answer.figure && answer.metric !== 'powerDensity' ? ranked(answer) : nothing}
    ${answer.remark && !answer.missing.length ? html`<bw-notice tone=${answer.standing === 'counts' ? 'info' : 'unusual'}
      .text=${remark(answer.remark)} .more=${wayOut(answer.remark)}></bw-notice>` : nothing}
    ${answer.missing.length ? missing(answer.missing) : nothing}
    ${answer.notes.filter(note => note.key !== answer.remark?.key).map(note => html`<p class="soft">${remark(note)}</p>`)}
    ${figures(answer)}
    ${answer.steps.length ? worked(answer) : nothing}
  </section>`;
}

function headline({ powerDensityWm2 }) {
  const { value, low, high, unit } = powerDensityTexts(powerDensityWm2);
  return html`<p class="figure">${value} <span class="unit">${unit}</span></p>
    <p>${t('page.bench.resultWords', { value, low, high, unit })}</p>`;
}

function ranked({ metric, figure }) {
  return html`<p>${t('page.bench.rankedBy', { metric: `catalogue.metric.${metric}`, ...rankedTexts(figure) })}</p>`;
}

const missing = remarks => html`<div><h3>${t('page.bench.missing')}</h3>
  <ol class="missing">${remarks.map(each => html`<li>${remark(each)} ${wayOut(each)}</li>`)}</ol></div>`;

function wayOut({ key, values }) {
  const wayOutKey = `${key}.wayOut`;
  return has(wayOutKey) ? html`<span>${t(wayOutKey, values)}</span>` : nothing;
}

function figures(answer) {
  const rows = [
    ['voc', answer.openCircuitVoltageV, voltageTexts],
    ['jsc', answer.currentDensityAm2, currentDensityTexts],
    ['ff', answer.fillFactor, figure => figureTexts(figure, 1, '')],
    ['light', answer.effectiveIrradianceWm2, figure => figureTexts(figure, 1, 'W/m²')],
  ].filter(([, figure]) => figure);
  if (rows.length === 0) return nothing;
  return html`<table><caption class="unseen">${t('page.bench.figures')}</caption>
    <thead><tr><th scope="col">${t('page.bench.figure')}</th><th scope="col" class="number">${t('page.bench.value')}</th></tr></thead>
    <tbody>${rows.map(([key, figure, texts]) => row(key, texts(figure)))}</tbody></table>`;
}

const row = (key, { value, low, high, unit }) => html`<tr><td>${t(`page.bench.figure.${key}`)}</td>
  <td class="number"><strong>${value} ${unit}</strong><br><span class="soft small">${t('page.bench.lowToHigh', { low, high })}</span></td></tr>`;

const worked = ({ steps, budget, numbers, label }) => html`<details class="fold"><summary>${t('page.bench.worked.title')}</summary>
  <div class="flow">${workedSteps(steps)}
    ${budget.length ? html`<div><h3>${t('page.bench.worked.budget')}</h3>${budgetShares(budget)}</div>` : nothing}
    ${numbers ? html`<p><a class="button quiet" href=${cellAddress(numbers, label)}>${t('page.bench.tryNumbers')}</a></p>` : nothing}</div></details>`;
