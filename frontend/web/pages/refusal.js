import { Refused } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** What to show instead of a page that the server refused or did not answer. */
export function refusal(error) {
  return html`<div class="flow"><h1>${t('page.refusal.title')}</h1>
    ${error instanceof Refused ? refused(error)
      : html`<bw-notice tone="unusual" .heading=${t('page.header.silent')} .text=${t('page.header.silentMore')}></bw-notice>`}</div>`;
}

function refused({ detail, status }) {
  const mayHelp = status === 401 || status === 403;
  return html`<bw-notice tone="impossible" .text=${detail}></bw-notice>
    ${mayHelp ? html`<p><a class="button" href="/index.html">${t('page.refusal.signIn')}</a></p>` : nothing}`;
}
