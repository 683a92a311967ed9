import { Refused } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** What to show instead of a page that the server refused or did not answer. */
export function refusal(error) {
  if (!(error instanceof Refused)) {
    return html`<bw-notice tone="unusual" .heading=${t('page.header.silent')} .text=${t('page.header.silentMore')}></bw-notice>`;
  }
  const signIn = error.status === 401 || error.status === 403;
  return html`<bw-notice tone="impossible" .heading=${error.detail} .text=${error.wayOut ?? nothing}
    .more=${signIn ? html`<p><a href="/index.html">${t('page.refusal.signIn')}</a></p>` : nothing}></bw-notice>`;
}
