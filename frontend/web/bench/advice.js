/** What a kind of failure tells, and what to do about it: a failure that teaches is no loss. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** @param failure key of the kind of failure */
export const advice = failure => html`<div class="advice flow">
  <p><strong>${t('page.bench.advice.why')}</strong> ${t(`page.bench.adviceWhy.${failure}`)}</p>
  <p><strong>${t('page.bench.advice.now')}</strong> ${t(`page.bench.adviceNow.${failure}`)}</p></div>`;
