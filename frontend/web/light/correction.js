import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html } from '../kit/kit.js';
import './change.js';
import { typedText } from './typed.js';

/** Corrects a light reading. Fires `saved` with the new reading's id, or `left`. */
class LightCorrection extends PageElement {
  static properties = { station: { attribute: false }, reading: { attribute: false }, catalogue: { attribute: false }, value: { state: true } };

  constructor() {
    super();
    this.key = newId();
    this.value = null;
  }

  render() {
    this.value ??= { text: '', unit: this.reading.reading.unit };
    const { fields, units } = this.catalogue;
    const wanted = units.find(({ key }) => key === this.reading.reading.unit)?.quantity;
    const field = fields.find(({ key, quantity }) => quantity === wanted && ['illuminance', 'irradiance'].includes(key));
    return html`<bw-light-change .heading=${t('page.light.correctThis', { reading: this.#was, time: clock(this.reading.readAt) })}
      .label=${t('page.light.correctIt')} .ask=${this.#ask} .write=${this.#write}
      @saved=${this.#pass} @left=${this.#pass} .fields=${html`
      <bw-entry last name="corrected" .label=${t('page.light.shouldBe')} .field=${field} .units=${units} .value=${this.value}
        @entered=${event => { this.value = event.detail; }}></bw-entry>`}></bw-light-change>`;
  }

  get #was() {
    return typedText(this.reading.reading, this.catalogue.units);
  }

  #ask = async () => {
    const entry = this.querySelector('bw-entry');
    if (!entry.check().ready) return void entry.focus();
    this.typed = entry.typed;
    const preview = await post(`/api/irradiances/${this.reading.id}/preview`, { reading: this.typed });
    return { preview, lead: t('page.light.ifCorrected', { was: this.#was, is: typedText(this.typed, this.catalogue.units) }) };
  };

  #write = async () => {
    await put(`/api/irradiances/${this.key}`, {
      stationId: this.station.id, reading: this.typed, replaces: this.reading.id, noticedAt: serverClock.stamp(),
    });
    return this.key;
  };

  #pass = ({ type, detail }) => this.dispatchEvent(new CustomEvent(type, { detail }));
}

customElements.define('bw-light-correction', LightCorrection);
