import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** Everything to mend in some files, by file, row, column and what stands there. */
export function faultTable({ faults, faultCount }) {
  const words = faults.length < faultCount
    ? t('page.data.paperMendFirst', { shown: faults.length, count: faultCount }) : t('page.data.paperMend', { count: faultCount });
  return html`<bw-notice tone="impossible" .text=${words}></bw-notice>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.data.paperMendList')}><table class="mend">
      <thead><tr><th scope="col">${t('page.data.paperFile')}</th><th scope="col" class="number">${t('page.data.paperRow')}</th>
        <th scope="col">${t('page.data.paperColumn')}</th><th scope="col">${t('page.data.paperValue')}</th><th scope="col">${t('page.data.paperWhat')}</th></tr></thead>
      <tbody>${faults.map(fault)}</tbody></table></div>`;
}

function fault({ file, row, column, value, detail }) {
  return html`<tr><td data-name=${t('page.data.paperFile')}>${file}</td><td class="number" data-name=${t('page.data.paperRow')}>${row ?? '–'}</td>
    <td data-name=${t('page.data.paperColumn')}>${column == null ? '–' : html`<code>${column}</code>`}</td>
    <td data-name=${t('page.data.paperValue')}>${value === '' ? '–' : html`<code>${value}</code>`}</td><td class="what">${detail}</td></tr>`;
}
