import { post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing, uniqueId } from '../kit/kit.js';
import './change.js';

const KINDS = ['give', 'takeBack'];

/** Gives the spectrum of a station's own lamp as a table, or takes it back. Fires `saved`, or `left`. */
class SpectrumForm extends PageElement {
  static properties = { station: { attribute: false }, holds: { type: Boolean }, kind: { state: true }, csv: { state: true }, name: { state: true }, complaint: { state: true } };

  constructor() {
    super();
    this.key = newId();
    this.fieldId = uniqueId('spectrum');
    Object.assign(this, { kind: 'give', csv: '', name: '', complaint: null });
  }

  render() {
    return html`<bw-light-change .heading=${t('page.light.spectrum.heading', { name: this.station.name })} .label=${t(`page.light.spectrum.${this.kind}`)}
      .ask=${this.#ask} .write=${this.#write} @saved=${this.#pass} @left=${this.#pass} .fields=${html`
      ${this.holds ? html`<bw-choices .legend=${t('page.light.spectrum.what')} .value=${this.kind} @chosen=${event => { this.kind = event.detail; }}
        .options=${KINDS.map(key => ({ key, label: t(`page.light.spectrum.${key}`) }))}></bw-choices>` : nothing}
      ${this.kind === 'give' ? this.#table() : nothing}
      <bw-field name="name" maxlength="60" .label=${t(`page.light.spectrum.${this.kind}Name`)} .hint=${this.kind === 'give' ? t('page.light.spectrum.nameHint') : nothing}
        .value=${this.name} @typed=${event => { this.name = event.detail; }}></bw-field>`}></bw-light-change>`;
  }

  #table() {
    const id = this.fieldId;
    return html`<div class="field"><label for="${id}-file">${t('page.light.spectrum.file')}</label>
        <input id="${id}-file" type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" @change=${this.#read}></div>
      <div class="field"><label for=${id}>${t('page.light.spectrum.table')}</label><p class="hint" id="${id}-hint">${t('page.light.spectrum.tableHint')}</p>
        <textarea id=${id} rows="6" spellcheck="false" autocomplete="off" aria-describedby="${id}-hint ${id}-complaint" aria-invalid=${this.complaint ? 'true' : nothing}
          .value=${this.csv} @input=${event => this.#take(event.target.value)}></textarea>
        <div role="status">${this.complaint ? html`<p class="complaint" id="${id}-complaint"><bw-icon name="impossible"></bw-icon><span>${this.complaint}</span></p>` : nothing}</div></div>`;
  }

  #read = async event => {
    const [file] = event.target.files;
    if (!file) return;
    this.#take(await file.text());
    this.name ||= file.name.replace(/\.\w+$/, '').slice(0, 60);
  };

  #take(csv) {
    this.csv = csv;
    this.complaint = null;
  }

  #ask = async ({ name }) => {
    if (this.kind === 'give' && !this.csv.trim()) {
      this.complaint = t('page.light.spectrum.empty');
      return void this.querySelector('textarea').focus();
    }
    if (!name.trim()) {
      const field = this.querySelector('bw-field');
      field.complaint = t('page.light.spectrum.nameMissing');
      return void field.focus();
    }
    this.request = { name: name.trim(), csv: this.kind === 'give' ? this.csv : null };
    try {
      return { preview: await post(`/api/stations/${this.station.id}/spectra/preview`, this.request), lead: t(`page.light.spectrum.if.${this.kind}`) };
    } catch (error) {
      if (error.field !== 'csv') throw error;
      this.complaint = error.detail;
      return void this.querySelector('textarea').focus();
    }
  };

  #write = () => put(`/api/stations/${this.station.id}/spectra/${this.key}`, this.request);

  #pass = ({ type, detail }) => this.dispatchEvent(new CustomEvent(type, { detail }));
}

customElements.define('bw-spectrum-form', SpectrumForm);
