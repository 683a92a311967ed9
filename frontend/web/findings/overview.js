import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const ORDER = ['clear', 'suggestive', 'confounded', 'cannotTell'];
const ICONS = { clear: '●', suggestive: '◐', confounded: '⇄', cannotTell: '○' };

/** Parameters that can be compared, the strongest evidence first. */
export const compared = ({ study }) => study.parameters
  .filter(({ strength }) => ORDER.includes(strength))
  .sort((a, b) => ORDER.indexOf(a.strength) - ORDER.indexOf(b.strength) || a.p - b.p);

/** One sentence for each parameter, each a button that opens what stands behind it. */
export function overview(findings, chosen, words, choose) {
  const rest = findings.study.parameters.filter(({ strength }) => strength === 'nothingToCompare');
  return html`<section class="flow"><h2 class="unseen">${t('page.findings.overview')}</h2>
    <ul class="bare evidence">${compared(findings).map(one => html`<li>
      <button type="button" class="row ${one.strength}" aria-pressed=${one.parameter === chosen} @click=${() => choose(one.parameter)}>
        <span class="standing"><span aria-hidden="true">${ICONS[one.strength]}</span> ${t(`finding.strength.${one.strength}`)}</span>
        <span><strong>${words.parameter(one.parameter)}</strong><br>${words.sentence(one.sentence, one.parameter)}</span>
      </button></li>`)}</ul>
    ${rest.length === 0 ? nothing : html`<details class="fold"><summary>${t('page.findings.nothing', { count: rest.length })}</summary>
      <ul class="notes">${rest.map(one => html`<li><strong>${words.parameter(one.parameter)}</strong>: ${words.sentence(one.sentence, one.parameter)}</li>`)}</ul></details>`}
  </section>`;
}
