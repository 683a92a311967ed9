import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** The test behind the sentence, with its figures, for whoever wants to check it. */
export function figures({ spearman, kruskalWallis }) {
  if (!spearman && !kruskalWallis) return nothing;
  return html`<section class="flow"><h2>${t('page.findings.figures')}</h2>
    ${spearman ? test('spearman', { ...spearman, rho: signed(spearman.rho) }) : nothing}
    ${kruskalWallis ? test('kruskalWallis', { ...kruskalWallis, h: rounded(kruskalWallis.h), df: kruskalWallis.degreesOfFreedom }) : nothing}
  </section>`;
}

function test(name, values) {
  const shown = { ...values, p: chance(values.p) };
  return html`<p><strong>${t(`page.findings.${name}`)}</strong><br>${t(`page.findings.${name}Figures`, shown)}
    <span class="soft">${t(`page.findings.${values.evaluation ?? 'approximate'}`)}</span></p>`;
}

/** A probability as a reader can use it: two digits, and no zero. */
export function chance(p) {
  return p < 0.001 ? '< 0.001' : `= ${Number(p.toPrecision(2))}`;
}

const rounded = value => plain(Number(value.toPrecision(3)));

const signed = value => rounded(value).replace(/^(?!\u2212|0$)/, '+');
