/** The clock of a stage that waits: started by the team, shown big, buzzing once where the phone may. */
import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { endOf, leftText, minutesToOffer, startTimer, stopTimer } from './timers.js';

const TICK_MS = 1_000;
const BUZZ_MS = [300, 150, 300];

/** Draws itself anew each second, and at once when the phone wakes up. */
class Ticking extends PageElement {
  connectedCallback() {
    super.connectedCallback();
    this.ticking = setInterval(() => this.tick(), TICK_MS);
    this.awake = () => document.hidden || this.tick();
    document.addEventListener('visibilitychange', this.awake);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.ticking);
    document.removeEventListener('visibilitychange', this.awake);
  }

  tick() {
    this.requestUpdate();
  }
}

/** `cell` and the key of its `stage`. */
class StepTimer extends Ticking {
  static properties = { cell: { attribute: false }, stage: {}, minutes: { state: true } };

  tick() {
    const endsAt = endOf(this.cell.id, this.stage);
    if (this.running && endsAt && endsAt <= serverClock.now()) globalThis.navigator.vibrate?.(BUZZ_MS);
    this.running = endsAt > serverClock.now();
    super.tick();
  }

  render() {
    const offered = minutesToOffer(this.cell, this.stage);
    if (offered.length === 0) return nothing;
    const endsAt = endOf(this.cell.id, this.stage);
    return html`<div class="timer flow">${endsAt ? this.#running(endsAt) : this.#idle(offered)}
      <div role="status">${endsAt && endsAt <= serverClock.now() ? html`<p><strong>${t('page.bench.timer.over', { time: clock(endsAt) })}</strong></p>` : nothing}</div></div>`;
  }

  #idle(offered) {
    const minutes = this.minutes ?? offered[0];
    return html`<bw-choices .legend=${t(`page.bench.timer.${this.stage}`)} .value=${String(minutes)}
        .options=${offered.map(each => ({ key: String(each), label: t('page.bench.timer.minutes', { minutes: each }) }))}
        @chosen=${event => { this.minutes = Number(event.detail); }}></bw-choices>
      <button type="button" class="button quiet" @click=${() => this.#start(minutes)}><bw-icon name="waiting"></bw-icon>${t('page.bench.timer.start')}</button>`;
  }

  #running(endsAt) {
    return html`<p class="figure" role="timer">${leftText(endsAt, serverClock.now())}</p>
      ${endsAt > serverClock.now() ? html`<p>${t('page.bench.timer.until', { time: clock(endsAt) })}</p>` : nothing}
      <button type="button" class="button plain" @click=${this.#stop}>${t(endsAt > serverClock.now() ? 'page.bench.timer.stop' : 'page.bench.timer.again')}</button>`;
  }

  #start(minutes) {
    startTimer(this.cell.id, this.stage, minutes);
    this.tick();
  }

  #stop() {
    stopTimer(this.cell.id, this.stage);
    this.tick();
  }
}

/** One line about a wait that ends at `until` (ms): what is left and when it ends, or that it is over. */
class TimeLeft extends Ticking {
  static properties = { until: { type: Number }, over: {} };

  render() {
    if (!this.until) return nothing;
    const running = this.until > serverClock.now();
    if (!running && !this.over) return nothing;
    return html`<span class="tag ${running ? '' : 'fine'}"><bw-icon name=${running ? 'waiting' : 'fine'}></bw-icon>${running
      ? t('page.bench.timer.left', { left: leftText(this.until, serverClock.now()), time: clock(this.until) }) : this.over}</span>`;
  }
}

customElements.define('bw-step-timer', StepTimer);
customElements.define('bw-time-left', TimeLeft);
