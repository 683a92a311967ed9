import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/element.js';
import '../kit/countdown.js';
import '../kit/icon.js';
import { standingAnnouncement } from './room.js';

/** What the teacher tells the class, and the class's timers. `room` is a link of `followRoom`. Empty while there is none. */
class Banner extends PageElement {
  static properties = { room: { attribute: false } };

  #gone = null;

  firstUpdated() {
    this.room.addEventListener('change', () => this.requestUpdate());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this.#gone);
  }

  render() {
    const announcement = standingAnnouncement(this.room.body, serverClock.now());
    const timers = this.room.body?.timers ?? [];
    return html`<div role="status">${announcement ? html`<p class="announcement"><bw-icon name="info"></bw-icon>
        <span><strong>${announcement.words}</strong> <span class="small">${t('page.lesson.saidAt', { time: clock(announcement.madeAt) })}</span></span></p>` : nothing}</div>
      ${timers.length ? html`<ul class="bare class-timers">${timers.map(timer => html`<li><bw-icon name="waiting"></bw-icon>
        <bw-countdown .until=${timer.endsAt} .label=${timer.words}></bw-countdown></li>`)}</ul>` : nothing}`;
  }

  /** An announcement with an end goes away without a message. */
  updated() {
    clearTimeout(this.#gone);
    const until = Date.parse(this.room.body?.announcement?.until ?? '');
    const left = until - serverClock.now();
    if (left > 0) this.#gone = setTimeout(() => this.requestUpdate(), left + 1);
  }
}

customElements.define('bw-banner', Banner);
