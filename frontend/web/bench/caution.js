/** What can hurt at a stage, and who decides: never this tool. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** @param stage {key, hot} */
export const caution = stage => html`<div class="caution">
  <bw-icon name=${stage.hot ? 'hot' : 'unusual'}></bw-icon>
  <div><p>${t(`page.bench.caution.${stage.key}`)}</p>
  <p class="small">${t('page.bench.caution.defer')}</p></div></div>`;
