import { PageElement, html, nothing, uniqueId } from './element.js';

/**
 * One of many: `options` [{key, label}], `value` the chosen key, `none` what to show before; `always`: one is chosen from
 * the start. Fires `chosen`.
 */
class Picker extends PageElement {
  static properties = { label: {}, name: {}, options: { attribute: false }, value: {}, none: {}, always: { type: Boolean }, complaint: {} };

  constructor() {
    super();
    this.options = [];
    this.fieldId = uniqueId('picker');
  }

  render() {
    const id = this.fieldId;
    return html`<div class="field picker">
      <label for=${id}>${this.label}</label>
      <select id=${id} @change=${event => this.#choose(event.target.value)} aria-invalid=${this.complaint ? 'true' : nothing}
        aria-describedby="${id}-complaint">
        ${this.always ? nothing : html`<option value="" .selected=${!this.value}>${this.none}</option>`}
        ${this.options.map(({ key, label }) => html`<option value=${key} .selected=${key === this.value}>${label}</option>`)}
      </select>
      <div role="status">${this.complaint
        ? html`<p class="complaint" id="${id}-complaint"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>`
        : nothing}</div>
    </div>`;
  }

  focus() {
    this.querySelector('select')?.focus();
  }

  #choose(key) {
    this.value = key;
    this.complaint = null;
    this.dispatchEvent(new CustomEvent('chosen', { detail: key, bubbles: true }));
  }
}

customElements.define('bw-picker', Picker);
