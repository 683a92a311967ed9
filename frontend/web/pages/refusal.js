import { Refused } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** What to show instead of a page that the server refused or did not answer. */
export function refusal(error) {
  return html`<div class="flow"><h1>${t('page.refusal.title')}</h1>
    <bw-notice tone=${error instanceof Refused ? 'impossible' : 'unusual'} .text=${sentenceOf(error)}></bw-notice>
    ${asksForSignIn(error) ? html`<p><a class="button" href="/index.html">${t('page.refusal.signIn')}</a></p>` : nothing}</div>`;
}

/** One sentence for what went wrong between this page and the server. */
export const sentenceOf = error =>
  (error instanceof Refused ? error.detail : `${t('page.header.silent')} ${t('page.header.silentMore')}`);

const asksForSignIn = error => error instanceof Refused && (error.status === 401 || error.status === 403);
