import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { moves } from './moves.js';

/**
 * A change to a station in two steps: first what would move, then the change. `ask(values)` answers {preview, lead}, or nothing
 * while a field is at fault; `write()` does it. Without `fields` it asks at once. Fires `saved` with what `write` answers, or `left`.
 */
class LightChange extends PageElement {
  static properties = {
    heading: {}, label: {}, fields: { attribute: false }, ask: { attribute: false }, write: { attribute: false }, answer: { state: true },
  };

  async firstUpdated() {
    await this.querySelector('bw-form').updateComplete;
    const first = this.querySelector('bw-entry, bw-field, bw-choices, bw-picker');
    await first?.updateComplete;
    first?.focus();
  }

  render() {
    return html`<div class="correction flow"><h3>${this.heading}</h3>
      ${this.answer ? this.#moved() : html`<bw-form .label=${t('page.light.preview')} .send=${this.#ask} .fields=${this.fields ?? nothing}></bw-form>`}
      <button class="button plain" @click=${() => this.dispatchEvent(new CustomEvent('left'))}>${t('page.light.leave')}</button></div>`;
  }

  #moved() {
    return html`<div class="flow" tabindex="-1" data-moves>${moves(this.answer.preview, this.answer.lead)}
      <bw-form .label=${this.label} .send=${this.#write} .fields=${nothing}></bw-form></div>`;
  }

  #ask = async values => {
    this.answer = await this.ask(values);
    if (!this.answer) return;
    await this.updateComplete;
    this.querySelector('[data-moves]').focus();
  };

  #write = async () => {
    this.dispatchEvent(new CustomEvent('saved', { detail: await this.write() }));
  };
}

customElements.define('bw-light-change', LightChange);
