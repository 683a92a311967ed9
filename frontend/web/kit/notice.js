import { PageElement, html, nothing } from './element.js';
import './icon.js';

const ICONS = { fine: 'fine', unusual: 'unusual', impossible: 'impossible', info: 'info' };

/** A sentence that matters, with its tone: fine, unusual, impossible or info. `heading` is optional. */
class Notice extends PageElement {
  static properties = { tone: {}, heading: {}, text: {}, more: { attribute: false } };

  render() {
    const tone = this.tone ?? 'info';
    return html`<div class="notice ${tone}"><bw-icon name=${ICONS[tone]}></bw-icon>
      ${this.heading ? html`<p><strong>${this.heading}</strong></p>` : nothing}
      ${this.text ? html`<p>${this.text}</p>` : nothing}
      ${this.more ? html`<div>${this.more}</div>` : nothing}</div>`;
  }
}

/** A live region that is in the page before it speaks. `say('…')` announces politely. */
class Status extends PageElement {
  static properties = { text: { state: true } };

  connectedCallback() {
    super.connectedCallback();
    this.setAttribute('role', 'status');
  }

  say(text) {
    this.text = text;
  }

  render() {
    return this.text ? html`<p>${this.text}</p>` : nothing;
  }
}

customElements.define('bw-notice', Notice);
customElements.define('bw-status', Status);
