import { PageElement, html, live, nothing, uniqueId } from './element.js';

/** A row of radio buttons: `options` [{key, label}], `value` the chosen key. Fires `chosen` with the key. */
class Choices extends PageElement {
  static properties = {
    legend: {}, hint: {}, name: {}, options: { attribute: false }, value: {}, complaint: {},
    tall: { type: Boolean }, quiet: { type: Boolean },
  };

  constructor() {
    super();
    this.options = [];
    this.group = uniqueId('choices');
  }

  render() {
    return html`<fieldset class="choices ${this.tall ? 'tall' : ''}" aria-describedby=${this.complaint ? `${this.group}-complaint` : nothing}>
      <legend class=${this.quiet ? 'unseen' : nothing}>${this.legend}</legend>
      ${this.hint ? html`<p class="hint">${this.hint}</p>` : nothing}
      <div class="row">${this.options.map(option => this.#choice(option))}</div>
      <div role="status">${this.complaint
        ? html`<p class="complaint" id="${this.group}-complaint"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>`
        : nothing}</div>
    </fieldset>`;
  }

  #choice({ key, label }) {
    return html`<label class="choice"><input type="radio" name=${this.group} value=${key}
      .checked=${live(key === this.value)} @change=${() => this.#choose(key)}><span>${label}</span></label>`;
  }

  focus() {
    (this.querySelector('input:checked') ?? this.querySelector('input'))?.focus();
  }

  #choose(key) {
    this.value = key;
    this.complaint = null;
    this.dispatchEvent(new CustomEvent('chosen', { detail: key, bubbles: true }));
  }
}

customElements.define('bw-choices', Choices);
