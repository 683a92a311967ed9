import { Refused } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from './element.js';
import './field.js';
import './notice.js';

/**
 * A form that never loses what was typed. `fields` is its template, `label` the button's text, `send(values)` does the
 * work; what the server refuses is shown at the field it names, or above the button with the way out.
 */
class Form extends PageElement {
  static properties = {
    fields: { attribute: false }, label: {}, send: { attribute: false },
    busy: { state: true }, trouble: { state: true },
  };

  render() {
    return html`<form class="flow" novalidate @submit=${this.#submit}>
      ${this.fields}
      <div role="alert">${this.trouble
        ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      <button class="button whole" aria-busy=${this.busy ? 'true' : nothing}>${this.label}</button>
    </form>`;
  }

  async #submit(event) {
    event.preventDefault();
    if (this.busy) return;
    this.busy = true;
    this.trouble = null;
    try {
      await this.send(Object.fromEntries(new FormData(event.target)));
    } catch (error) {
      this.#show(error);
    } finally {
      this.busy = false;
    }
  }

  #show(error) {
    if (!(error instanceof Refused)) {
      this.trouble = t('page.form.noAnswer');
      return;
    }
    const field = error.field && [...this.querySelectorAll('bw-field')].find(each => each.name === error.field);
    if (field) {
      field.complaint = error.detail;
      field.focus();
    } else {
      this.trouble = error.detail;
    }
  }
}

customElements.define('bw-form', Form);
