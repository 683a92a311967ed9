import { LANGUAGES, choose, language } from '../core/language.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from './element.js';

/** The languages by their own names; the present one is marked. */
class LanguagePicker extends PageElement {
  render() {
    return html`<nav class="languages" aria-label=${t('page.language')}>
      ${Object.entries(LANGUAGES).map(([key, { name }]) => html`<button type="button" class="button plain" lang=${key}
        aria-current=${key === language ? 'true' : nothing} @click=${() => choose(key)}>${name}</button>`)}</nav>`;
  }
}

customElements.define('bw-language', LanguagePicker);
