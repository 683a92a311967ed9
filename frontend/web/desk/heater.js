import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, keyed, nothing } from '../kit/kit.js';
import { safetyWatch } from '../safety/watch.js';
import './heater-entry.js';
import { cooling, heatState, heatTime, heatersOf } from '../lesson/heat.js';

const LOOK_AGAIN_MS = 5_000;

/** The heaters with what lies where, how long still, and what is hot beside them. */
export const heater = (desk, { reload }) =>
  html`<bw-heater-board .desk=${desk} .reload=${reload}></bw-heater-board>`;

class HeaterBoard extends PageElement {
  static properties = { desk: { attribute: false }, reload: { attribute: false }, correcting: { state: true }, trouble: { state: true } };

  #looking = null;

  connectedCallback() {
    super.connectedCallback();
    this.#looking = setInterval(() => this.requestUpdate(), LOOK_AGAIN_MS);
    this.end = safetyWatch.start(this.desk.day.id, () => this.requestUpdate());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#looking);
    this.end();
  }

  render() {
    const { slots } = this.desk.lesson;
    const heaters = heatersOf(slots);
    const hot = cooling(slots, serverClock.now());
    return html`<section class="flow" aria-labelledby="heaters"><h2 id="heaters">${t('page.lesson.heaters')}</h2>
      <p class="small soft">${t('page.lesson.checkFirst')}</p>
      ${heaters.length ? html`<div class="heaters">${heaters.map(each => this.#plate(each))}</div>` : html`<p class="soft">${t('page.lesson.noHeater')}</p>`}
      ${hot.length ? html`<h3>${t('page.lesson.besideHeaters')}</h3><ul class="bare cooling">${hot.map(slot => this.#cooling(slot))}</ul>` : nothing}
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      ${this.#entry(slots.find(({ id }) => id === this.correcting) ?? null)}
    </section>`;
  }

  #plate({ heater: name, spots }) {
    return html`<div class="plate flow"><h3>${name}</h3><div class="places">${spots.map(spot => this.#spot(spot))}</div></div>`;
  }

  #spot({ position, slot, twice }) {
    if (!slot) return html`<div class="spot"><span class="at">${position}</span><span class="soft">${t('page.lesson.free')}</span></div>`;
    const state = heatState(slot, serverClock.now());
    return html`<div class="spot ${state}"><span class="at">${position} · ${slot.targetDegC} °C</span>
      <strong>${slot.label}</strong>${twice ? html`<span class="twice"><bw-icon name="impossible"></bw-icon> ${t('page.lesson.twice')}</span>` : nothing}
      <span>${t(`page.lesson.state.${state}`)}</span>
      <bw-countdown .until=${heatTime(slot)}></bw-countdown>
      <button class="button quiet" aria-label=${t('page.lesson.takeOutOf', { label: slot.label })} @click=${() => this.#takeOut(slot)}>${t('page.lesson.takeOut')}</button>${this.#correct(slot)}</div>`;
  }

  #cooling(slot) {
    const state = heatState(slot, serverClock.now());
    return html`<li><strong>${slot.label}</strong><span>${t(`page.lesson.state.${state}`)}</span>
      ${state === 'COOLING' ? html`<bw-countdown .until=${slot.coolUntil}></bw-countdown>` : nothing}${this.#correct(slot)}</li>`;
  }

  #correct(slot) {
    return html`<button class="button plain" aria-label=${t('page.lesson.correctCell', { label: slot.label })} @click=${() => this.#open(slot)}>${t('page.lesson.correct')}</button>`;
  }

  /** One form, for a new stay or for the one that is corrected. */
  #entry(slot) {
    return html`<details class="fold" ?open=${slot !== null}><summary>${slot ? t('page.lesson.correctCell', { label: slot.label }) : t('page.lesson.putIn')}</summary>
      <div class="narrow">${keyed(slot?.id ?? '', html`<bw-heater-entry .desk=${this.desk} .slot=${slot}
        @left=${() => { this.correcting = null; }} @done=${this.#done}></bw-heater-entry>`)}</div></details>`;
  }

  async #open({ id }) {
    this.correcting = id;
    await this.updateComplete;
    const entry = this.querySelector('bw-heater-entry');
    await entry.updateComplete;
    entry.scrollIntoView({ block: 'center' });
    entry.focus();
  }

  #done = async () => {
    this.correcting = null;
    await this.reload();
  };

  async #takeOut({ id }) {
    this.trouble = null;
    try {
      await put(`/api/heater-outs/${newId()}`, { slotId: id, outAt: null });
      await this.reload();
    } catch (error) {
      this.trouble = error.detail ?? t('page.form.noAnswer');
    }
  }
}

customElements.define('bw-heater-board', HeaterBoard);
