/** A cell's place on a heater, in words and with its time. */
import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { t } from '../core/texts.js';
import { to } from '../bench/routes.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { heatState, heatTime, slotOfCell } from './heat.js';

/** What to know about a cell's slot, with the button that takes it out. Nothing when it is on no heater. */
export function slotPanel(data, cellId) {
  const slot = slotOfCell(data.lesson?.slots ?? [], cellId, serverClock.now());
  return slot ? html`<bw-slot .slotOf=${slot} .changed=${() => data.refresh()}></bw-slot>` : nothing;
}

/** The state in words. After heat always: check before touching. */
export const heatWords = (slot, state) => t(`page.lesson.heat.${state}`, { heater: slot.heater, position: slot.position, target: slot.targetDegC });

/** `slotOf` is the slot, `changed` is called after it was taken out. Draws itself anew when its state changes. */
class Slot extends PageElement {
  static properties = { slotOf: { attribute: false }, changed: { attribute: false }, trouble: { state: true } };

  #turn = null;

  disconnectedCallback() {
    super.disconnectedCallback();
    clearTimeout(this.#turn);
  }

  render() {
    const slot = this.slotOf;
    const state = heatState(slot, serverClock.now());
    return html`<section class="slot ${state}" aria-label=${t('page.lesson.heater')}>
      <p><bw-icon name="hot"></bw-icon> <strong>${heatWords(slot, state)}</strong></p>
      ${state === 'TOUCHABLE' ? nothing : html`<bw-countdown .until=${heatTime(slot)} .label=${t(`page.lesson.left.${state}`)}></bw-countdown>`}
      <p class="small">${t('page.lesson.checkFirst')}</p>
      ${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}
      ${slot.outAt ? nothing : html`<div class="beside"><button class="button quiet" @click=${this.#takeOut}>${t('page.lesson.takenOut')}</button>
        <a class="button plain" href=${to('heater', slot.cellId)}>${t('page.lesson.correct')}</a></div>`}
    </section>`;
  }

  updated() {
    clearTimeout(this.#turn);
    const left = Date.parse(heatTime(this.slotOf)) - serverClock.now();
    if (left > 0) this.#turn = setTimeout(() => this.requestUpdate(), left + 1);
  }

  async #takeOut() {
    this.trouble = null;
    try {
      await put(`/api/heater-slots/${this.slotOf.id}/out`, { outAt: new Date(serverClock.now()).toISOString() });
      await this.changed?.();
    } catch (error) {
      this.trouble = error.detail ?? t('page.form.noAnswer');
    }
  }
}

customElements.define('bw-slot', Slot);
