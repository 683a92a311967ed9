import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** The tests behind the sentence, with their figures, for whoever wants to check them. */
export function figures({ tests, effect, yieldCurve }, parameter, words) {
  const { difference, trend, composite, spearman, kruskalWallis, theilSen, fisher } = tests;
  const yields = tests.yield;
  return html`<details class="fold"><summary>${t('page.findings.figures')}</summary><div class="flow">
    ${effect ? html`<p><strong>${t('page.findings.effect')}</strong><br>${t('page.findings.effectFigures', {
      to: words.level(parameter, effect.toLevel), from: words.level(parameter, effect.fromLevel), ratio: rounded(effect.ratio),
      low: rounded(effect.interval.low), high: rounded(effect.interval.high), smallest: rounded(effect.smallest) })}</p>` : nothing}
    ${test('page.findings.trend', 'page.findings.blockedFigures', trend)}
    ${test('page.findings.difference', 'page.findings.blockedFigures', difference)}
    ${test('page.findings.composite', 'page.findings.blockedFigures', composite)}
    ${test('page.findings.yieldTest', 'page.findings.blockedFigures', yields)}
    ${test('page.findings.spearman', 'page.findings.spearmanFigures', spearman && { ...spearman, rho: signed(spearman.rho) })}
    ${test('page.findings.kruskalWallis', 'page.findings.kruskalWallisFigures', kruskalWallis && { ...kruskalWallis, h: rounded(kruskalWallis.h) })}
    ${test('page.findings.fisher', 'page.findings.fisherFigures', fisher)}
    ${theilSen ? html`<p><strong>${t('page.findings.theilSen')}</strong><br>${t('page.findings.theilSenFigures', {
      percent: signed(percentOf(theilSen.slope)), low: signed(percentOf(theilSen.interval.low)), high: signed(percentOf(theilSen.interval.high)), unit: words.symbol(parameter) })}</p>` : nothing}
    ${yieldCurve ? html`<p><strong>${t('page.findings.yieldCurve')}</strong><br>${t('page.findings.yieldCurveFigures', {
      slope: signed(yieldCurve.slope), low: signed(yieldCurve.slopeInterval.low), high: signed(yieldCurve.slopeInterval.high), p: chance(yieldCurve.p) })}</p>` : nothing}
  </div></details>`;
}

function test(name, text, values) {
  if (!values) return nothing;
  const shown = { ...values, ...(values.q == null ? {} : { q: rounded(values.q) }), p: chance(values.p) };
  return html`<p><strong>${t(name)}</strong><br>${t(text, shown)} <span class="soft">${t(`page.findings.evaluation.${values.evaluation}`)}</span></p>`;
}

/** A probability as a reader can use it: two digits, and no zero. */
export const chance = p => (p < 0.001 ? `< ${plain(0.001)}` : `= ${plain(Number(p.toPrecision(2)))}`);

export const rounded = value => plain(Number(value.toPrecision(3)));

const percentOf = slope => 100 * Math.expm1(slope);

const signed = value => rounded(value).replace(/^(?!\u2212|0$)/, '+');
