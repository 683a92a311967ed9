import { serverClock } from '../core/clock.js';
import { Refused, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { cooling, heatState, heatTime, heatersOf } from '../lesson/heat.js';

const LOOK_AGAIN_MS = 5_000;

/** The heaters with what lies where, how long still, and what is hot beside them. */
export const heater = (desk, { reload }) =>
  html`<bw-heater-board .desk=${desk} .reload=${reload}></bw-heater-board>`;

class HeaterBoard extends PageElement {
  static properties = { desk: { attribute: false }, reload: { attribute: false }, cellId: { state: true }, trouble: { state: true } };

  #freshId = newId();
  #looking = null;

  connectedCallback() {
    super.connectedCallback();
    this.#looking = setInterval(() => this.requestUpdate(), LOOK_AGAIN_MS);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#looking);
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
      <details class="fold"><summary>${t('page.lesson.putIn')}</summary><div class="narrow">${this.#form(slots)}</div></details>
    </section>`;
  }

  #plate({ heater: name, spots }) {
    return html`<div class="plate flow"><h3>${name}</h3><div class="places">${spots.map(spot => this.#spot(spot))}</div></div>`;
  }

  #spot({ position, slot }) {
    if (!slot) return html`<div class="spot"><span class="at">${position}</span><span class="soft">${t('page.lesson.free')}</span></div>`;
    const state = heatState(slot, serverClock.now());
    return html`<div class="spot ${state}"><span class="at">${position} · ${slot.targetDegC} °C</span>
      <strong>${slot.label}</strong><span>${t(`page.lesson.state.${state}`)}</span>
      <bw-countdown .until=${heatTime(slot)}></bw-countdown>
      <button class="button quiet" aria-label=${t('page.lesson.takeOutOf', { label: slot.label })} @click=${() => this.#takeOut(slot)}>${t('page.lesson.takeOut')}</button></div>`;
  }

  #cooling(slot) {
    const state = heatState(slot, serverClock.now());
    return html`<li><strong>${slot.label}</strong><span>${t(`page.lesson.state.${state}`)}</span>
      ${state === 'COOLING' ? html`<bw-countdown .until=${slot.coolUntil}></bw-countdown>` : nothing}</li>`;
  }

  #form(slots) {
    const on = new Set(slots.filter(({ outAt }) => !outAt).map(({ cellId }) => cellId));
    const cells = this.desk.cells.filter(({ id }) => !on.has(id)).map(({ id, label }) => ({ key: id, label }));
    return html`<bw-form class="heater-form" .label=${t('page.lesson.putInSend')} .send=${values => this.#putIn(values)} .fields=${html`
      <bw-picker .label=${t('page.lesson.whichCell')} .options=${cells} .none=${t('page.lesson.chooseCell')} .value=${this.cellId ?? ''}
        @chosen=${event => { this.cellId = event.detail; }}></bw-picker>
      <bw-field name="heater" maxlength="24" .label=${t('page.lesson.heaterName')} .hint=${t('page.lesson.heaterNameHint')} .value=${slots.at(-1)?.heater ?? ''}></bw-field>
      <bw-field name="position" maxlength="2" .label=${t('page.lesson.position')} .hint=${t('page.lesson.positionHint')}></bw-field>
      <bw-field name="target" maxlength="12" .label=${t('page.lesson.target')} .value=${slots.at(-1)?.target.text ?? ''}></bw-field>
      <bw-field name="holdMinutes" maxlength="3" .label=${t('page.lesson.hold')} .hint=${t('page.lesson.holdHint')} .value=${slots.at(-1) ? String(slots.at(-1).holdMinutes) : ''}></bw-field>`}></bw-form>`;
  }

  async #putIn({ heater: name, position, target, holdMinutes }) {
    await put(`/api/heater-slots/${this.#freshId}`, {
      cellId: this.cellId || null, heater: name, position: wholeOf(position, 'position'), target: { text: target, unit: 'degC' },
      holdMinutes: wholeOf(holdMinutes, 'holdMinutes'), inAt: null, replaces: null,
    });
    this.#freshId = newId();
    this.cellId = '';
    this.querySelector('[name="position"]').value = '';
    await this.reload();
  }

  async #takeOut({ id }) {
    this.trouble = null;
    try {
      await put(`/api/heater-slots/${id}/out`, { outAt: null });
      await this.reload();
    } catch (error) {
      this.trouble = error.detail ?? t('page.form.noAnswer');
    }
  }
}

/** A whole number from 1 on as typed; refused at the field when it is none. */
export function wholeOf(typed, field) {
  if (/^\s*[1-9]\d{0,3}\s*$/.test(typed)) return Number(typed);
  throw new Refused(422, { detail: t('page.lesson.wholeNumber'), field });
}

customElements.define('bw-heater-board', HeaterBoard);
