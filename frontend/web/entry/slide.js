/** A typed number with a slider under it: both show the same value, and either may be used. */
import { DECIMAL } from '../core/language.js';
import { readNumber } from '../core/quantity.js';
import { PageElement, html } from '../kit/kit.js';
import { verdictOn } from './echo.js';
import './entry.js';
import { typedAmount, unitOf } from './wording.js';

const DIGITS = 3;

/** As a bw-entry, and `log` for quantities where a factor counts. The slider runs over the field's usual range. */
class Slide extends PageElement {
  static properties = {
    field: { attribute: false }, units: { attribute: false }, value: { attribute: false },
    label: {}, name: {}, optional: { type: Boolean }, log: { type: Boolean },
  };

  render() {
    const { field, units, value } = this;
    const amount = verdictOn(readNumber(value.text ?? '', this.#unit.key, [field.quantity], units), field, units).amount;
    return html`<bw-entry free .optional=${this.optional} .name=${this.name} .label=${this.label} .field=${field} .units=${units} .value=${value}></bw-entry>
      <bw-slider .label=${this.label} .log=${this.log} .min=${field.usualLowSi} .max=${field.usualHighSi}
        .value=${amount?.valueSi ?? NaN} .said=${amount ? typedAmount(amount, units) : ''} @slid=${this.#slide}></bw-slider>`;
  }

  get #unit() {
    return unitOf(this.value.unit, this.units) ?? unitOf(this.field.units[0], this.units);
  }

  #slide({ detail: si }) {
    const unit = this.#unit;
    const text = String(Number(((si - unit.offsetSi) / unit.toSi).toPrecision(DIGITS)));
    const mark = /[.,](?=[^.,]*$)/.exec(this.value.text ?? '')?.[0] ?? DECIMAL;
    this.dispatchEvent(new CustomEvent('entered', { detail: { text: text.replace('.', mark), unit: unit.key }, bubbles: true }));
  }
}

customElements.define('bw-slide', Slide);
