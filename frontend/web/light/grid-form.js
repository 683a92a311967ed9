import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, live, nothing } from '../kit/kit.js';

const SIDES = [2, 3, 5];
const USUAL_SIDE = 3;

/** Readings of a station's light over a square of places, in one unit. Fires `saved`. */
class GridForm extends PageElement {
  static properties = {
    station: { attribute: false }, catalogue: { attribute: false },
    side: { state: true }, unit: { state: true }, values: { state: true }, complaint: { state: true },
  };

  constructor() {
    super();
    this.#startAnew();
    this.side = USUAL_SIDE;
  }

  render() {
    const field = this.catalogue.fields.find(({ key }) => key === (this.station.instrument === 'luxMeter' ? 'illuminance' : 'irradiance'));
    this.unit ??= field.units[0];
    return html`<bw-form .label=${t('page.light.even.send')} .send=${this.#send} .fields=${html`
      <bw-choices .legend=${t('page.light.even.side')} .value=${String(this.side)}
        .options=${SIDES.map(side => ({ key: String(side), label: t('page.light.even.places', { side }) }))}
        @chosen=${event => { this.side = Number(event.detail); }}></bw-choices>
      <bw-choices .legend=${t('page.light.even.unit')} .value=${this.unit}
        .options=${field.units.map(key => ({ key, label: this.catalogue.units.find(unit => unit.key === key).symbols[0] }))}
        @chosen=${event => { this.unit = event.detail; }}></bw-choices>
      <fieldset class="flow"><legend>${t('page.light.even.legend')}</legend>
        <div class="places side-${this.side}">${Array.from({ length: this.side ** 2 }, (_, at) => this.#place(at))}</div>
        <div role="status">${this.complaint ? html`<p class="complaint"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>` : nothing}</div>
      </fieldset>`}></bw-form>`;
  }

  #place(at) {
    const label = t('page.light.even.place', { row: Math.floor(at / this.side) + 1, place: (at % this.side) + 1 });
    return html`<input type="text" inputmode="decimal" autocomplete="off" enterkeyhint="next" data-at=${at} aria-label=${label}
      .value=${live(this.values[at] ?? '')} @input=${event => this.#type(at, event.target.value)}>`;
  }

  #type(at, text) {
    this.values[at] = text;
    this.complaint = null;
  }

  #send = async () => {
    const texts = Array.from({ length: this.side ** 2 }, (_, at) => (this.values[at] ?? '').trim());
    const empty = texts.indexOf('');
    if (empty >= 0) {
      this.complaint = t('page.light.even.empty');
      return this.querySelector(`[data-at="${empty}"]`).focus();
    }
    await put(`/api/grids/${this.key}`, {
      stationId: this.station.id, readings: texts.map(text => ({ text, unit: this.unit })), columns: this.side, noticedAt: serverClock.stamp(),
    });
    this.#startAnew();
    this.dispatchEvent(new CustomEvent('saved'));
  };

  #startAnew() {
    this.key = newId();
    this.values = {};
    this.complaint = null;
  }
}

customElements.define('bw-grid-form', GridForm);
