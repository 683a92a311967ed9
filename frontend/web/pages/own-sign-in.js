/** A teacher's own sign-in: another password, and where else it is open. */
import { put } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import './signed-in-browsers.js';

/** Where the header's link leads. */
const PASSWORD = '#password';

/** `name` is the teacher's, for programs that keep passwords. */
class OwnSignIn extends PageElement {
  static properties = {
    name: {}, open: { state: true }, legible: { state: true }, done: { state: true },
  };

  connectedCallback() {
    super.connectedCallback();
    addEventListener('hashchange', this.#asked);
    this.#asked();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.#asked);
  }

  render() {
    return html`<section class="card flow"><h2>${t('page.account.title')}</h2>
      <div role="status">${this.done ? html`<bw-notice tone="fine" .text=${t(this.done)}></bw-notice>` : nothing}</div>
      ${this.#fold('password', 'page.account.change', () => this.#change())}
      ${this.#fold('elsewhere', 'page.account.elsewhere', () => html`<bw-signed-in-browsers .name=${this.name}
        @ended=${({ detail }) => this.#finish(detail)}></bw-signed-in-browsers>`)}</section>`;
  }

  #fold(key, summary, content) {
    return html`<details class="fold" .open=${this.open === key} @toggle=${({ target }) => this.#toggled(key, target.open)}>
      <summary>${t(summary)}</summary>${this.open === key ? content() : nothing}</details>`;
  }

  #change() {
    const kind = this.legible ? 'text' : 'password';
    return html`<bw-form .label=${t('page.account.changeSend')} .send=${this.#renew} .fields=${html`
      <input hidden autocomplete="username" .value=${this.name}>
      <bw-field name="present" .kind=${kind} autocomplete="current-password" .label=${t('page.account.present')}></bw-field>
      <bw-field name="password" .kind=${kind} autocomplete="new-password" .label=${t('page.account.new')}
        .hint=${t('page.start.passwordHint')}></bw-field>
      <label class="tick"><input type="checkbox" .checked=${Boolean(this.legible)}
        @change=${({ target }) => { this.legible = target.checked; }}><span>${t('page.account.show')}</span></label>`}></bw-form>`;
  }

  #asked = async () => {
    if (location.hash !== PASSWORD) return;
    this.#toggled('password', true);
    await this.updateComplete;
    this.querySelector('bw-form')?.updateComplete.then(() => this.querySelector('bw-field').focus());
  };

  #toggled(key, open) {
    if (open) {
      this.open = key;
      this.done = null;
    } else if (this.open === key) {
      this.open = null;
    }
    this.legible = false;
  }

  #renew = async values => {
    await put('/api/access/password', values);
    this.#finish('page.account.changed');
  };

  #finish(sentence) {
    this.querySelector('details[open] > summary').focus();
    this.open = null;
    this.done = sentence;
    if (location.hash === PASSWORD) history.replaceState(null, '', location.pathname);
  }
}

customElements.define('bw-own-sign-in', OwnSignIn);
