/** Join: a phone scans the QR link (#CODE) or somebody types the code. */
import { t } from '../core/texts.js';
import { html, openPage } from '../kit/kit.js';
import './join-form.js';

const { draw } = await openPage('join');
const code = decodeURIComponent(location.hash.slice(1));

draw(html`<div class="flow">
  <h1>${t('page.join.title')}</h1>
  <bw-join-form class="card" .code=${code}></bw-join-form>
  <bw-notice .text=${t('page.join.privacy')}></bw-notice>
  <bw-language></bw-language>
</div>`);

// The code is taken out of the address, so that a shared screen or a bookmark does not carry it on.
if (code) {
  history.replaceState(null, '', location.pathname);
  document.querySelector('bw-join-form').tryCode();
}
