import { clock } from '../core/format.js';
import { post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { moves } from './moves.js';
import { typedText } from './typed.js';

/** Corrects a light reading in two steps: first what would move, then the correction. Fires `saved` with the new reading's id, or `left`. */
class LightCorrection extends PageElement {
  static properties = {
    station: { attribute: false }, reading: { attribute: false }, catalogue: { attribute: false },
    value: { state: true }, preview: { state: true },
  };

  constructor() {
    super();
    this.key = newId();
    this.value = null;
    this.preview = null;
  }

  async firstUpdated() {
    await this.querySelector('bw-form').updateComplete;
    const entry = this.querySelector('bw-entry');
    await entry.updateComplete;
    entry.focus();
  }

  render() {
    this.value ??= { text: '', unit: this.reading.reading.unit };
    return html`<div class="correction flow">
      <h3>${t('page.light.correctThis', { reading: this.#was, time: clock(this.reading.readAt) })}</h3>
      ${this.preview ? this.#moved() : this.#form()}
      <button class="button plain" @click=${() => this.dispatchEvent(new CustomEvent('left'))}>${t('page.light.leave')}</button></div>`;
  }

  get #was() {
    return typedText(this.reading.reading, this.catalogue.units);
  }

  #form() {
    const { fields, units } = this.catalogue;
    const wanted = units.find(({ key }) => key === this.reading.reading.unit)?.quantity;
    const field = fields.find(({ key, quantity }) => quantity === wanted && ['illuminance', 'irradiance'].includes(key));
    return html`<bw-form .label=${t('page.light.preview')} .send=${this.#ask} .fields=${html`
      <bw-entry last name="corrected" .label=${t('page.light.shouldBe')} .field=${field} .units=${units} .value=${this.value}
        @entered=${event => { this.value = event.detail; }}></bw-entry>`}></bw-form>`;
  }

  #moved() {
    return html`<div class="flow" tabindex="-1" data-moves>${moves(this.preview, this.#was, typedText(this.typed, this.catalogue.units))}
      <bw-form .label=${t('page.light.correctIt')} .send=${this.#correct} .fields=${nothing}></bw-form></div>`;
  }

  #ask = async () => {
    const entry = this.querySelector('bw-entry');
    if (!entry.check().ready) return entry.focus();
    this.typed = entry.typed;
    this.preview = await post(`/api/irradiances/${this.reading.id}/preview`, { reading: this.typed });
    await this.updateComplete;
    this.querySelector('[data-moves]').focus();
  };

  #correct = async () => {
    await put(`/api/irradiances/${this.key}`, {
      stationId: this.station.id, reading: this.typed, replaces: this.reading.id, noticedAt: new Date().toISOString(),
    });
    this.dispatchEvent(new CustomEvent('saved', { detail: this.key }));
  };
}

customElements.define('bw-light-correction', LightCorrection);
