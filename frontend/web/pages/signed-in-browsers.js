/** Where a teacher is signed in, and an end to it there: in one other browser or in all. */
import { clock, dateHere, dayInYear } from '../core/format.js';
import { get, post } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** Instead of one browser. */
const ALL = 'all';

/** `name` is the teacher's, for programs that keep passwords. Fires `ended` with the key of what to say then. */
class SignedInBrowsers extends PageElement {
  static properties = {
    name: {}, browsers: { state: true }, unreachable: { state: true }, target: { state: true },
  };

  connectedCallback() {
    super.connectedCallback();
    this.#look();
  }

  render() {
    if (this.unreachable) return html`<bw-notice tone="impossible" .text=${t('page.account.noAnswer')}></bw-notice>`;
    if (!this.browsers) return nothing;
    const [here, ...others] = this.browsers;
    return html`<div class="flow"><p>${t('page.account.here', { place: placeOf(here) })}</p>
      ${others.length ? this.#ending(others) : html`<p class="soft">${t('page.account.nowhereElse')}</p>`}</div>`;
  }

  #ending(others) {
    const options = others.map(browser => ({ key: browser.id, label: placeOf(browser) }));
    if (others.length > 1) options.unshift({ key: ALL, label: t('page.account.everywhereElse', { count: others.length }) });
    return html`<bw-form .label=${t('page.account.elsewhereSend')} .send=${this.#signOut} .fields=${html`
      <p class="soft">${t('page.account.elsewhereMore')}</p>
      <bw-choices tall .legend=${t('page.account.where')} .options=${options} .value=${this.target}
        @chosen=${({ detail }) => { this.target = detail; }}></bw-choices>
      <input hidden autocomplete="username" .value=${this.name}>
      <bw-field name="present" kind="password" autocomplete="current-password" .label=${t('page.account.present')}></bw-field>`}></bw-form>`;
  }

  async #look() {
    try {
      this.browsers = await get('/api/access/browsers');
      this.target = this.browsers.length > 2 ? ALL : this.browsers[1]?.id;
    } catch {
      this.unreachable = true;
    }
  }

  #signOut = async ({ present }) => {
    const isLast = this.target === ALL || this.browsers.length === 2;
    await post('/api/access/sign-out-elsewhere', { present, browser: this.target === ALL ? null : this.target });
    this.dispatchEvent(new CustomEvent('ended', { detail: isLast ? 'page.account.elsewhereDone' : 'page.account.thereDone' }));
  };
}

/** A browser as its owner knows it again: by its name and when the sign-in began. */
function placeOf({ browser, since }) {
  const named = browser || t('page.account.someBrowser');
  return t('page.account.place', { browser: named, day: dayInYear(dateHere(since)), time: clock(since) });
}

customElements.define('bw-signed-in-browsers', SignedInBrowsers);
