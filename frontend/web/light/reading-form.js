import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html } from '../kit/kit.js';

/** A reading of a station's light, typed as its instrument shows it. Fires `saved`. */
class ReadingForm extends PageElement {
  static properties = { station: { attribute: false }, catalogue: { attribute: false }, value: { state: true } };

  constructor() {
    super();
    this.value = {};
    this.key = newId();
  }

  render() {
    const { fields, units } = this.catalogue;
    const field = fields.find(({ key }) => key === (this.station.instrument === 'luxMeter' ? 'illuminance' : 'irradiance'));
    return html`<bw-form .label=${t('page.light.send')} .send=${this.#send} .fields=${html`
      <bw-entry last name="reading" .label=${t('page.light.reading')} .field=${field} .units=${units} .value=${this.value}
        @entered=${event => { this.value = event.detail; }}></bw-entry>`}></bw-form>`;
  }

  #send = async () => {
    const entry = this.querySelector('bw-entry');
    if (!entry.check().ready) return entry.focus();
    await put(`/api/irradiances/${this.key}`, {
      stationId: this.station.id, reading: entry.typed, replaces: null, noticedAt: serverClock.stamp(),
    });
    this.key = newId();
    this.value = { unit: entry.typed.unit };
    this.dispatchEvent(new CustomEvent('saved'));
  };
}

customElements.define('bw-reading-form', ReadingForm);
