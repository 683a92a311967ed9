import { PageElement, html, live, nothing, uniqueId } from './element.js';
import './icon.js';

/** A text field: label above, hint under it, the complaint beside it. Fires `typed` with the text. */
class Field extends PageElement {
  static properties = {
    label: {}, hint: {}, value: {}, complaint: {}, kind: {}, name: {},
    autocomplete: {}, maxlength: { type: Number }, enterkeyhint: {}, look: {},
  };

  constructor() {
    super();
    this.value = '';
    this.kind = 'text';
    this.fieldId = uniqueId('field');
  }

  render() {
    const { fieldId: id, hint, complaint } = this;
    return html`<div class="field">
      <label for=${id}>${this.label}</label>
      ${hint ? html`<p class="hint" id="${id}-hint">${hint}</p>` : nothing}
      <input id=${id} name=${this.name ?? nothing} type=${this.kind} class=${this.look ?? nothing} .value=${live(this.value)}
        autocomplete=${this.autocomplete ?? 'off'} autocapitalize="off" spellcheck="false"
        maxlength=${this.maxlength ?? nothing} enterkeyhint=${this.enterkeyhint ?? nothing}
        aria-describedby="${hint ? `${id}-hint` : ''} ${complaint ? `${id}-complaint` : ''}"
        aria-invalid=${complaint ? 'true' : nothing} @input=${this.#type}>
      <div role="status">${complaint
        ? html`<p class="complaint" id="${id}-complaint"><bw-icon name="impossible"></bw-icon><span>${complaint}</span></p>`
        : nothing}</div>
    </div>`;
  }

  focus() {
    this.querySelector('input')?.focus();
  }

  #type(event) {
    this.value = event.target.value;
    this.complaint = null;
    this.dispatchEvent(new CustomEvent('typed', { detail: this.value, bubbles: true }));
  }
}

customElements.define('bw-field', Field);
