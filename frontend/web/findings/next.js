import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** The few further cells that would tell more. */
export function next({ next: sentences }, words) {
  if (sentences.length === 0) return nothing;
  return html`<section class="flow"><h2>${t('page.findings.next')}</h2>
    <ul class="notes">${sentences.map(each => html`<li>${words.sentence(each, null)}</li>`)}</ul></section>`;
}
