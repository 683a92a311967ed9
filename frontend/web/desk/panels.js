/** The panels beside list and table, one at a time, chosen by a row of tabs (WAI-ARIA 1.2, pattern "tabs"). */
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** `panels` [{key, draw}], `chosen` a key. Fires `chosen` with the key. */
class Panels extends PageElement {
  static properties = { panels: { attribute: false }, chosen: {} };

  render() {
    const chosen = this.panels.find(({ key }) => key === this.chosen) ?? this.panels[0];
    return html`<div class="tabs" role="tablist" aria-label=${t('page.desk.panels')} @keydown=${this.#move}>
        ${this.panels.map(({ key }) => html`<button role="tab" id="tab-${key}" aria-controls="panel" aria-selected=${key === chosen.key ? 'true' : 'false'}
          tabindex=${key === chosen.key ? 0 : -1} @click=${() => this.#choose(key)}>${t(`page.desk.panel.${key}`)}</button>`)}</div>
      <div class="panel" id="panel" role="tabpanel" tabindex="0" aria-labelledby="tab-${chosen.key}">${chosen.draw() ?? nothing}</div>`;
  }

  #choose(key) {
    this.dispatchEvent(new CustomEvent('chosen', { detail: key }));
  }

  #move(event) {
    const by = { ArrowRight: 1, ArrowLeft: -1, Home: -this.panels.length, End: this.panels.length }[event.key];
    if (!by) return;
    event.preventDefault();
    const at = this.panels.findIndex(({ key }) => key === this.chosen);
    const { key } = this.panels[Math.min(this.panels.length - 1, Math.max(0, at + by))];
    this.#choose(key);
    this.querySelector(`#tab-${key}`).focus();
  }
}

customElements.define('bw-panels', Panels);
