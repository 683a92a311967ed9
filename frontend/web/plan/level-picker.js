/** Picks one level of a parameter: from the catalogue's list, as a number with its unit, or in the class's own words. */
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { levelWords, parameterName } from './names.js';

/** `parameter` is a key, `taken` the levels there are already. Fires `picked` with {text, unit}. */
class LevelPicker extends PageElement {
  static properties = { parameter: {}, catalogue: { attribute: false }, taken: { attribute: false }, label: {}, typed: { state: true } };

  constructor() {
    super();
    this.taken = [];
    this.typed = {};
  }

  get known() {
    return this.catalogue.parameters.find(({ key }) => key === this.parameter);
  }

  render() {
    const { known } = this;
    if (known?.kind === 'sort') return this.#list(known);
    return html`<div class="adder">${known ? this.#number(known) : html`<bw-field .label=${this.label} maxlength="24" .value=${this.typed.text ?? ''}
        @typed=${event => { this.typed = { text: event.detail, unit: null }; }}></bw-field>`}
      <button type="button" class="button quiet" @click=${this.#add}>${t('page.plan.add')}</button></div>`;
  }

  #list({ levels }) {
    const open = levels.filter(level => !this.taken.some(({ text }) => text === level));
    return open.length === 0 ? nothing : html`<bw-picker .label=${this.label} .none=${t('page.plan.choose')} .value=${''}
      .options=${open.map(text => ({ key: text, label: levelWords({ parameter: this.parameter, text }, this.catalogue) }))}
      @chosen=${event => this.#choose(event)}></bw-picker>`;
  }

  #number({ field }) {
    return html`<bw-entry optional name=${this.parameter} .label=${this.label ?? parameterName(this.parameter)} .units=${this.catalogue.units}
      .field=${this.catalogue.fields.find(({ key }) => key === field)} .value=${this.typed}
      @entered=${event => { this.typed = event.detail; }}></bw-entry>`;
  }

  #choose(event) {
    if (event.detail) this.#pick({ text: event.detail, unit: null });
    event.target.querySelector('select').value = '';
    event.target.value = '';
  }

  #add() {
    const entry = this.querySelector('bw-entry');
    if (entry && !entry.check().ready) return entry.focus();
    const typed = entry ? entry.typed : this.typed.text?.trim() ? { text: this.typed.text.trim(), unit: null } : null;
    if (!typed) return this.querySelector('input').focus();
    this.typed = {};
    return this.#pick(typed);
  }

  #pick(detail) {
    this.dispatchEvent(new CustomEvent('picked', { detail }));
  }
}

customElements.define('bw-level-picker', LevelPicker);
