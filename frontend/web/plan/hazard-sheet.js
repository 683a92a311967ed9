/** The hazards of this plan's steps on one sheet, to be held against the school's own risk assessment. */
import { day as dateWords } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

export function hazardSheet({ hazards }, day) {
  return html`<section class="flow hazard-sheet print-hazards" aria-labelledby="hazards"><h2 id="hazards">${t('page.plan.hazards')}</h2>
    <p class="print-only">${day.title}, ${dateWords(day.date)}</p>
    <bw-notice tone="unusual" .text=${t('page.plan.hazardsLead')}></bw-notice>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.plan.tableOf', { what: t('page.plan.hazards') })}><table>
      <thead><tr><th>${t('page.plan.hazard')}</th><th>${t('page.plan.atStep')}</th><th>${t('page.plan.caution')}</th><th>${t('page.plan.codes')}</th></tr></thead>
      <tbody>${hazards.map(({ key, stages, codes, adultPart }) => html`<tr><th scope="row">${t(`catalogue.hazard.${key}`)}</th>
        <td>${stages.map(stage => t(`catalogue.stage.${stage}`)).join(', ')}</td><td>${t(`catalogue.hazardCaution.${key}`)}${adultPart ? html` <strong>${t(`catalogue.hazardAdult.${key}`)}</strong>` : nothing}</td><td>${codes.join(' ') || '–'}</td></tr>`)}</tbody></table></div>
    <p class="print-only assessed">${t('page.plan.assessed')}</p></section>`;
}
