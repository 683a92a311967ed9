/** A cell's place on a heater, in words and with its time. */
import { serverClock } from '../core/clock.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { to } from '../bench/routes.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { heatState, heatTime, slotOfCell } from './heat.js';

/** What to know about a cell's slot, with the button that takes it out. Nothing when it is on no heater. */
export function slotPanel(data, outbox, cellId) {
  const slot = slotOfCell(data.slots, cellId, serverClock.now());
  return slot ? html`<bw-slot .slotOf=${slot} .takeOut=${() => outbox.add(takenOut(slot, data.teamId))}></bw-slot>` : nothing;
}

/** Where a cell is, in a few words; nothing when it is on no heater. */
export function slotTag(data, cellId) {
  const slot = slotOfCell(data.slots, cellId, serverClock.now());
  if (!slot) return nothing;
  const state = heatState(slot, serverClock.now());
  return html`<span class="tag heat ${state}"><bw-icon name="hot"></bw-icon><span>${t(`page.lesson.tag.${slot.outAt ? state : 'ON'}`, slot)}
    ${state === 'TOUCHABLE' || !heatTime(slot) ? nothing : html`<bw-countdown .until=${heatTime(slot)} .label=${t(`page.lesson.left.${state}`)}></bw-countdown>`}</span></span>`;
}

/** The entry that ends a stay, with the time at which it ended. */
function takenOut({ id: slotId, cellId, label }, teamId) {
  const id = newId();
  return {
    id, path: `/api/heater-outs/${id}`, body: { slotId, outAt: serverClock.stamp() },
    about: { kind: 'heaterOut', cellId, label, teamId, after: slotId },
  };
}

/** The state in words. After heat always: check before touching. */
export const heatWords = (slot, state) => t(`page.lesson.heat.${state}`, { heater: slot.heater, position: slot.position, target: slot.targetDegC });

/** `slotOf` is the slot, `takeOut` notes on the phone that it was taken out. Draws itself anew when its state changes. */
class Slot extends PageElement {
  static properties = { slotOf: { attribute: false }, takeOut: { attribute: false }, trouble: { state: true } };

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
      ${state === 'TOUCHABLE' || !heatTime(slot) ? nothing : html`<bw-countdown .until=${heatTime(slot)} .label=${t(`page.lesson.left.${state}`)}></bw-countdown>`}
      <p class="small">${t('page.lesson.checkFirst')}</p>
      ${slot.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}
      ${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}
      ${slot.outAt ? nothing : html`<div class="beside"><button class="button quiet" @click=${this.#take}>${t('page.lesson.takenOut')}</button>
        <a class="button plain" href=${to('heater', slot.cellId)}>${t('page.lesson.correct')}</a></div>`}
    </section>`;
  }

  updated() {
    clearTimeout(this.#turn);
    const left = Date.parse(heatTime(this.slotOf)) - serverClock.now();
    if (left > 0) this.#turn = setTimeout(() => this.requestUpdate(), left + 1);
  }

  async #take() {
    this.trouble = null;
    this.taking ??= this.takeOut().catch(() => { this.trouble = t('page.bench.storeRefused'); });
    await this.taking;
    this.taking = null;
  }
}

customElements.define('bw-slot', Slot);
