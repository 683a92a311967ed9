/** What to have ready. */
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { levelWords } from './names.js';

export function needs({ needs: all, settings }, catalogue) {
  return html`<section class="flow needs" aria-labelledby="needs"><h2 id="needs">${t('page.plan.needs')}</h2>
    <p class="soft small">${t('page.plan.needsLead', { waste: settings.wastePercent })}</p>
    <table><thead><tr><th>${t('page.plan.what')}</th><th class="number">${t('page.plan.forCells')}</th><th class="number">${t('page.plan.amount')}</th></tr></thead>
      <tbody>${all.map(need => html`<tr><td>${t(`page.plan.need.${need.key}`)}${need.level ? `: ${levelWords({ parameter: need.parameter, text: need.level }, catalogue)}` : ''}</td>
        <td class="number">${need.cells}</td><td class="number">${plain(need.amount)} ${t(`page.plan.unit.${need.unit}`)}</td></tr>`)}</tbody></table></section>`;
}
