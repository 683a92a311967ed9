import { figureTexts } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** What the newest light of a station is to cells of each dye: equal watts under two lamps are not equal light. */
export function dyeLights({ dyes, name }) {
  if (dyes.length === 0) return nothing;
  return html`<details class="fold"><summary>${t('page.light.dyes.title')}</summary>
    <div class="flow"><p>${t('page.light.dyes.why')}</p>
      <table><caption class="unseen">${t('page.light.dyes.caption', { name })}</caption>
        <thead><tr><th scope="col">${t('page.light.dyes.dye')}</th><th scope="col" class="number">${t('page.light.dyes.light')}</th></tr></thead>
        <tbody>${dyes.map(row)}</tbody></table></div></details>`;
}

function row({ dye, effectiveIrradianceWm2 }) {
  const { value, low, high } = figureTexts(effectiveIrradianceWm2, 1, 'W/m²');
  return html`<tr><th scope="row">${t(`page.calculator.dye.${dye}`)}</th>
    <td class="number"><strong>${value}</strong> <span class="small soft">${t('page.light.dyes.between', { low, high })}</span></td></tr>`;
}
