/** A number typed as the meter shows it, its unit chosen beside it, and the echo of what was understood. */
import { remember, remembered } from '../core/drafts.js';
import { readNumber } from '../core/quantity.js';
import { t } from '../core/texts.js';
import { PageElement, html, live, nothing, uniqueId } from '../kit/kit.js';
import { echo, usual, verdictOn } from './echo.js';
import { symbolOf, unitOf } from './wording.js';

/**
 * `field` and `units` come from the catalogue; `value` is {text, unit, confirmed}. Fires `entered` with the new value at
 * every keystroke. `check()` tells whether it may be sent and says why not. A `free` entry only tries a number out, so that
 * an unusual one needs no tick and a usual one no echo.
 */
class Entry extends PageElement {
  static properties = {
    field: { attribute: false }, units: { attribute: false }, value: { attribute: false },
    label: {}, name: {}, complaint: {}, optional: { type: Boolean }, free: { type: Boolean }, last: { type: Boolean }, left: { state: true },
  };

  constructor() {
    super();
    this.fieldId = uniqueId('entry');
    this.value = {};
  }

  get unit() {
    return unitOf(this.value.unit, this.units)
      ?? unitOf(remembered(this.field.key, ''), this.units) ?? unitOf(this.field.units[0], this.units);
  }

  /** The unit that counts: one inside the text wins over the row. */
  get meantUnit() {
    return unitOf(this.verdict.amount?.unit, this.units) ?? this.unit;
  }

  /** What travels: the text untouched and the unit's key. Null when nothing was typed. */
  get typed() {
    return this.text.trim() === '' ? null : { text: this.text, unit: this.unit.key };
  }

  get text() {
    return this.value.text ?? '';
  }

  get verdict() {
    const quantities = [this.field.quantity];
    return verdictOn(readNumber(this.text, this.unit.key, quantities, this.units), this.field, this.units);
  }

  /** {ready, unusual}; shows the reason below the field when it is not ready. */
  check() {
    const { tone } = this.verdict;
    this.left = true;
    this.complaint = tone === 'empty' && !this.optional ? t('page.entry.slip.EMPTY') : null;
    const ready = tone === 'fine' || (tone === 'empty' && this.optional) || (tone === 'unusual' && this.value.confirmed);
    return { ready: Boolean(ready), unusual: tone === 'unusual' };
  }

  focus() {
    this.querySelector('input')?.focus();
  }

  render() {
    const id = this.fieldId;
    const faulty = this.left && ['impossible', 'ask'].includes(this.verdict.tone);
    return html`<div class="field entry">
      <label for=${id}>${this.label}${symbolOf(this.unit) ? html`<span class="unseen">, ${symbolOf(this.unit)}</span>` : nothing}</label>
      <div class="typing">
        <input id=${id} name=${this.name} type="text" inputmode="decimal" autocomplete="off" autocorrect="off" spellcheck="false"
          enterkeyhint=${this.last ? 'send' : 'next'} .value=${live(this.text)} aria-describedby="${id}-echo"
          aria-invalid=${faulty || this.complaint ? 'true' : nothing} @input=${this.#type} @blur=${this.#leave}>
        ${this.#sign()}
        ${this.#unitRow()}
      </div>
      <div class="below" id="${id}-echo" aria-live=${this.left ? 'polite' : 'off'}>${this.#below()}</div>
    </div>`;
  }

  #below() {
    if (this.complaint) return html`<p class="echo impossible"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>`;
    const verdict = this.verdict;
    if (this.free && verdict.tone === 'fine') return nothing;
    if (verdict.tone === 'fine' || this.left && verdict.tone !== 'empty') {
      return echo(verdict, { field: this.field, units: this.units, unitKey: this.unit.key, free: this.free, confirmed: Boolean(this.value.confirmed), act: this.#acts });
    }
    return html`<p class="echo hint">${usual(this.field, this.unit.key, this.units)}</p>`;
  }

  #sign() {
    return this.field.possibleLowSi < 0 && unitOf(this.field.units[0], this.units).offsetSi === 0
      ? html`<button type="button" class="button quiet sign" aria-label=${t('page.entry.sign')} @click=${this.#flip}>±</button>` : nothing;
  }

  #unitRow() {
    const units = this.field.units.map(key => unitOf(key, this.units)).filter(unit => unit?.quantity === this.field.quantity);
    if (symbolOf(this.unit) === '') return nothing;
    if (units.length < 2) return html`<span class="only-unit">${symbolOf(this.unit)}</span>`;
    return html`<bw-choices quiet .legend=${t('page.entry.unitOf', { label: this.label })} .value=${this.meantUnit.key}
      .options=${units.map(unit => ({ key: unit.key, label: symbolOf(unit) }))}
      @chosen=${event => this.#changeUnit(event.detail)}></bw-choices>`;
  }

  #acts = {
    confirm: confirmed => this.#set({ confirmed }),
    choose: amount => this.#set({ text: amount.text, confirmed: false }),
    changeUnit: unit => this.#changeUnit(unit.key),
  };

  #type(event) {
    this.complaint = null;
    this.left = false;
    this.#set({ text: event.target.value, confirmed: false });
  }

  #leave() {
    this.left = true;
  }

  // A unit inside the text would win over the row, so choosing one takes it out of the text.
  #changeUnit(key) {
    remember(this.field.key, key);
    this.#set({ text: this.text.replace(/[^\d)]+$/u, ''), unit: key, confirmed: false });
  }

  #flip() {
    const bare = this.text.trim().replace(/^[-+\u2212]/, '');
    this.#set({ text: /^[-\u2212]/.test(this.text.trim()) ? bare : `-${bare}`, confirmed: false });
    this.focus();
  }

  #set(change) {
    this.complaint = null;
    this.value = { ...this.value, unit: this.unit.key, ...change };
    this.dispatchEvent(new CustomEvent('entered', { detail: this.value, bubbles: true }));
  }
}

customElements.define('bw-entry', Entry);
