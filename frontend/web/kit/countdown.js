import { serverClock } from '../core/clock.js';
import { leftText, milestone, minutesOver } from '../core/countdown.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from './element.js';

const SECOND_MS = 1_000;

/**
 * The time left until `until` (ISO text or ms, by the server's clock), or since when it is over. A screen reader hears of
 * it politely when five minutes are left, one minute, and none, and is left alone otherwise.
 */
class Countdown extends PageElement {
  static properties = { until: {}, label: {}, said: { state: true } };

  #timer = null;
  #reached;

  connectedCallback() {
    super.connectedCallback();
    this.awake = () => document.hidden || this.#tick();
    document.addEventListener('visibilitychange', this.awake);
    this.#tick();
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
    document.removeEventListener('visibilitychange', this.awake);
  }

  willUpdate(changed) {
    if (changed.has('until')) this.#reached = undefined;
    this.#notice(milestone(this.#end, serverClock.now()));
  }

  render() {
    const over = minutesOver(this.#end, serverClock.now());
    return html`<span class="countdown ${over === null ? '' : 'over'}">${this.label ? html`<span class="what">${this.label}</span> ` : nothing}
      <span class="left" role="timer">${over === null ? leftText(this.#end, serverClock.now()) : sinceWords(over)}</span></span>
      <span class="unseen" role="status">${this.said ?? nothing}</span>`;
  }

  get #end() {
    return typeof this.until === 'number' ? this.until : Date.parse(this.until);
  }

  /** What was reached before anybody looked is not news. */
  #notice(reached) {
    if (reached && this.#reached !== undefined && reached !== this.#reached) {
      this.said = t(`page.countdown.${reached}`, { label: this.label || t('page.countdown.timer') });
    }
    this.#reached = reached;
  }

  #tick() {
    clearTimeout(this.#timer);
    this.requestUpdate();
    this.#timer = setTimeout(() => this.#tick(), SECOND_MS - (serverClock.now() % SECOND_MS));
  }
}

const sinceWords = minutes => (minutes === 0 ? t('page.countdown.justOver') : t('page.countdown.overSince', { minutes }));

customElements.define('bw-countdown', Countdown);
