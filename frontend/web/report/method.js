import { plain } from '../core/format.js';
import { ruleWords } from '../core/rule.js';
import { t } from '../core/texts.js';
import { budgetShares, workedSteps } from '../calculator/worked.js';
import { html, nothing } from '../kit/kit.js';
import { setUpOf } from '../light/settings.js';

/** Shares of the variance below this are told together. */
const SMALL = 0.01;

/** How results came about, under which reference conditions, and in which light. */
export function method({ day, stations }) {
  return html`<section class="flow"><h2>${t('page.report.method')}</h2>
    <p>${t('page.report.methodReference', { irradiance: day.referenceIrradianceWm2, area: day.referenceAreaCm2, rule: ruleWords(day.rule) })}</p>
    <ol class="method">${['light', 'dark', 'reference', 'interval', 'place'].map(key => html`<li>${t(`page.report.method.${key}`)}</li>`)}</ol>
    ${stations.length === 0 ? nothing : html`<table class="stations"><thead><tr><th scope="col">${t('page.report.station')}</th><th scope="col">${t('page.report.setUp')}</th>
      <th scope="col" class="number">${t('page.report.lightThere')}</th></tr></thead><tbody>${stations.map(station)}</tbody></table>`}</section>`;
}

function station(one) {
  const read = one.readings.filter(reading => !reading.replacedBy && !reading.setAside.at(-1)?.reason).map(({ totalIrradianceWm2: { value } }) => value);
  const rounded = value => plain(Number(value.toPrecision(3)));
  return html`<tr><th scope="row">${one.name}</th><td>${setUpOf(one)}</td><td class="number">${read.length === 0 ? t('page.report.neverRead')
    : html`${t('page.report.lightRange', { low: rounded(Math.min(...read)), high: rounded(Math.max(...read)) })}<br><span class="soft small">${t('page.report.lightReadings', { count: read.length })}</span>`}</td></tr>`;
}

/** One result in full, to redo by hand, and where its uncertainty comes from. */
export function worked(result) {
  if (!result || result.steps.length === 0) return nothing;
  return html`<section class="flow worked"><h2>${t('page.report.worked', { cell: result.label })}</h2>
    <p>${t('page.report.workedMeans')}</p>${workedSteps(result.steps)}
    ${result.budget.length ? html`<div class="kept flow"><h3>${t('page.bench.worked.budget')}</h3><p class="soft">${t('page.report.budgetMeans')}</p>${budget(result.budget)}</div>` : nothing}</section>`;
}

/** What matters as bars, the rest in a sentence. */
function budget(lines) {
  const [large, small] = [lines.filter(({ share }) => share >= SMALL), lines.filter(({ share }) => share < SMALL)];
  return html`${budgetShares(large)}${small.length ? html`<p class="soft small">${t('page.report.budgetSmall', { inputs: small.map(({ input }) => t(input)).join('; ') })}</p>` : nothing}`;
}
