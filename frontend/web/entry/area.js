/** The area of a film by its two sides, as a ruler shows them. */
import { readArea } from '../core/quantity.js';
import { fixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, live, nothing, uniqueId } from '../kit/kit.js';
import { echo, verdictOn } from './echo.js';
import { symbolOf, unitOf } from './wording.js';

const SIDES = ['mm', 'cm'];

/** `value` is {first, second, unit, confirmed}; fires `entered`. `typed` is what travels: "15 x 15" beside mm. */
class AreaEntry extends PageElement {
  static properties = {
    field: { attribute: false }, units: { attribute: false }, value: { attribute: false },
    name: {}, complaint: {}, left: { state: true },
  };

  constructor() {
    super();
    this.fieldId = uniqueId('area');
    this.value = {};
  }

  get unit() {
    return unitOf(this.value.unit ?? SIDES[0], this.units);
  }

  get typed() {
    return this.#text === 'x' ? null : { text: this.#text, unit: this.unit.key };
  }

  get #text() {
    const { first = '', second = '' } = this.value;
    return `${first.trim()} x ${second.trim()}`.trim();
  }

  get verdict() {
    return verdictOn(readArea(this.#text, this.unit.key, this.units), this.field, this.units);
  }

  check() {
    this.left = true;
    const { tone } = this.verdict;
    const nothingTyped = this.typed === null;
    this.complaint = tone === 'empty' && !nothingTyped ? t('page.entry.otherSide') : null;
    return { ready: nothingTyped || tone === 'fine' || tone === 'unusual' && Boolean(this.value.confirmed), unusual: tone === 'unusual' };
  }

  focus() {
    this.querySelector('input')?.focus();
  }

  render() {
    return html`<fieldset class="entry area" aria-describedby="${this.fieldId}-echo">
      <legend class="label-line">${t('page.entry.area')}</legend>
      <p class="hint">${t('page.entry.areaHint')}</p>
      <div class="typing">${this.#side('first')}<span aria-hidden="true">×</span>${this.#side('second')}
        <bw-choices quiet .legend=${t('page.entry.unitOf', { label: t('page.entry.area') })} .value=${this.unit.key}
          .options=${SIDES.map(key => ({ key, label: symbolOf(unitOf(key, this.units)) }))}
          @chosen=${event => this.#set({ unit: event.detail, confirmed: false })}></bw-choices></div>
      <div class="below" id="${this.fieldId}-echo" aria-live=${this.left ? 'polite' : 'off'}>${this.#below()}</div>
    </fieldset>`;
  }

  #side(side) {
    const faulty = this.left && (this.complaint || ['impossible', 'ask'].includes(this.verdict.tone));
    return html`<span class="field side"><input type="text" inputmode="decimal" autocomplete="off" autocorrect="off" spellcheck="false"
      enterkeyhint="next" aria-label=${t(`page.entry.side.${side}`)} .value=${live(this.value[side] ?? '')}
      aria-invalid=${faulty ? 'true' : nothing} @input=${event => this.#type(side, event)} @blur=${this.#leave}></span>`;
  }

  #below() {
    if (this.complaint) return html`<p class="echo impossible"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>`;
    const verdict = this.verdict;
    if (verdict.tone === 'fine') return html`<p class="echo fine"><bw-icon name="fine"></bw-icon><span>${this.#product(verdict.amount)}</span></p>`;
    const inSquares = { ...verdict, amount: verdict.amount && { ...verdict.amount, unit: 'cm2' } };
    return this.left && verdict.tone !== 'empty'
      ? echo(inSquares, { field: this.field, units: this.units, unitKey: 'cm2', confirmed: Boolean(this.value.confirmed), act: this.#acts }) : nothing;
  }

  #product({ valueSi }) {
    const { first, second } = this.value;
    return `${first.trim()} × ${second.trim()} ${symbolOf(this.unit)} = ${fixed(valueSi * 1e4, 2)} cm²`;
  }

  #acts = { confirm: confirmed => this.#set({ confirmed }), choose: () => {}, changeUnit: () => {} };

  #type(side, event) {
    this.left = false;
    this.#set({ [side]: event.target.value, confirmed: false });
  }

  #leave(event) {
    this.left = !this.contains(event.relatedTarget);
  }

  #set(change) {
    this.complaint = null;
    this.value = { ...this.value, ...change };
    this.dispatchEvent(new CustomEvent('entered', { detail: this.value, bubbles: true }));
  }
}

customElements.define('bw-area', AreaEntry);
