import { t } from '../core/texts.js';
import { post } from '../core/http.js';
import { PageElement, html, nothing } from './element.js';
import './mark.js';

const LINKS = {
  teacher: ['days', 'plan', 'desk', 'light', 'wall', 'findings', 'report', 'data', 'calculator'],
  team: ['bench', 'wall', 'findings', 'calculator'],
  nobody: [],
};
const OF_A_DAY = new Set(['plan', 'desk', 'light', 'wall', 'findings', 'report', 'data']);

/**
 * The band at the top: name, the pages this person may use, who they are. `who` is the answer of /api/access, `here`
 * the page's key, `day` the lab day's id, `whom` the name to show, `mark` a team's mark.
 */
class Header extends PageElement {
  static properties = { who: { attribute: false }, here: {}, day: {}, whom: {}, mark: { type: Number } };

  render() {
    return html`<header class="band ${this.who?.kind === 'team' ? 'of-team' : ''}">
      <a class="skip button" href="#main" @click=${this.#skip}>${t('page.header.skip')}</a>
      <a class="name" href="/index.html">${this.#berry()}<span>Berrywatt</span></a>
      ${this.#links().length ? html`<nav aria-label=${t('page.header.pages')}>${this.#links().map(each => this.#link(each))}
        ${this.#password()}</nav>` : nothing}
      ${this.whom ? html`<span class="whom"><bw-mark .mark=${this.mark}></bw-mark>${this.whom}</span>` : nothing}
      ${this.who?.kind === 'teacher' ? html`<button class="leave" @click=${this.#leave}>${t('page.header.signOut')}</button>` : nothing}
    </header>`;
  }

  #links() {
    return (LINKS[this.who?.kind] ?? []).filter(page => this.day || !OF_A_DAY.has(page));
  }

  #link(page) {
    const fragment = OF_A_DAY.has(page) ? `#${this.day}` : '';
    return html`<a href="/${page}.html${fragment}" aria-current=${page === this.here ? 'page' : nothing}>${t(`page.header.${page}`)}</a>`;
  }

  /** On the pages of a day the band is full. */
  #password() {
    return this.who.kind === 'teacher' && !this.day ? html`<a href="/index.html#password">${t('page.header.password')}</a>` : nothing;
  }

  #berry() {
    return html`<svg viewBox="0 0 32 32" aria-hidden="true"><path d="M14 7a11 11 0 1 0 11 11H14z" fill="currentColor"/>
      <path d="M18 3v11h11" fill="none" stroke="currentColor" stroke-width="3.5"/></svg>`;
  }

  // The fragment of some pages names the lab day, so the skip link moves focus instead of the address.
  #skip(event) {
    event.preventDefault();
    const main = document.getElementById('main');
    main.tabIndex = -1;
    main.focus();
  }

  async #leave() {
    await post('/api/access/sign-out');
    location.assign('/index.html');
  }
}

customElements.define('bw-header', Header);
