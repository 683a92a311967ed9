/** One honest line about what this phone still holds. */
import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { to } from './routes.js';

class OutboxStrip extends PageElement {
  static properties = { outbox: { attribute: false }, sentAt: { state: true } };

  firstUpdated() {
    this.outbox.addEventListener('changed', () => this.requestUpdate());
    this.outbox.addEventListener('sent', () => { this.sentAt = serverClock.now(); });
  }

  render() {
    return html`<div role="status">${this.#line()}</div>`;
  }

  #line() {
    const { entries, signInNeeded } = this.outbox;
    const refused = entries.filter(entry => entry.state === 'refused').length;
    if (signInNeeded) return this.#strip('unusual', 'unusual', html`${t('page.bench.signInNeeded')} <a href="/join.html">${t('page.bench.joinAgain')}</a>`);
    if (refused) return this.#strip('impossible', 'impossible', html`${t('page.bench.refusedCount', { count: refused })} <a href=${to('waiting')}>${t('page.bench.seeWhy')}</a>`);
    if (entries.length) return this.#strip('pending', 'waiting', html`${t('page.bench.waitingCount', { count: entries.length })} <a href=${to('waiting')}>${t('page.bench.look')}</a>`);
    return this.sentAt ? this.#strip('fine', 'sent', t('page.bench.allSent', { time: clock(this.sentAt) })) : nothing;
  }

  #strip(tone, icon, words) {
    return html`<p class="strip ${tone}"><bw-icon name=${icon}></bw-icon><span>${words}</span></p>`;
  }
}

customElements.define('bw-outbox-strip', OutboxStrip);
