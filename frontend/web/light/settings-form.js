import { post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { checkEntries } from '../entry/check.js';
import { PageElement, html } from '../kit/kit.js';
import './change.js';

const AMOUNTS = ['distance', 'angle'];

/** Corrects a name and settings that were typed wrong when the station was set up. Fires `saved` with its id, or `left`. */
class SettingsForm extends PageElement {
  static properties = { station: { attribute: false }, catalogue: { attribute: false }, draft: { state: true } };

  constructor() {
    super();
    this.key = newId();
  }

  willUpdate() {
    const { name, lamp, instrument, distance, angle } = this.station.settings.at(-1);
    this.draft ??= { name, lamp, instrument, distance: distance ?? {}, angle: angle ?? {} };
  }

  render() {
    return html`<bw-light-change .heading=${t('page.light.correctSettingsOf', { name: this.station.name })} .label=${t('page.light.correctIt')}
      .ask=${this.#ask} .write=${this.#write} @saved=${this.#pass} @left=${this.#pass} .fields=${html`
      <p class="small">${t('page.light.settingsLead')}</p>
      <bw-field name="name" maxlength="24" .label=${t('page.light.name')} .value=${this.draft.name} @typed=${event => this.#set('name', event.detail)}></bw-field>
      ${this.#choice('lamp', this.catalogue.lamps)}
      ${this.#choice('instrument', this.catalogue.instruments)}
      ${AMOUNTS.map(name => this.#amount(name))}
      <bw-field name="reason" maxlength="120" .label=${t('page.bench.correctionReason')} .hint=${t('page.light.settingsReasonHint')}></bw-field>`}></bw-light-change>`;
  }

  #choice(name, keys) {
    return html`<bw-choices .name=${name} .legend=${t(`page.light.${name}`)} .value=${this.draft[name]}
      .options=${keys.map(key => ({ key, label: t(`catalogue.${name}.${key}`) }))} @chosen=${event => this.#set(name, event.detail)}></bw-choices>`;
  }

  #amount(name) {
    const { fields, units } = this.catalogue;
    return html`<bw-entry optional name=${name} .label=${t(`page.light.${name}`)} .field=${fields.find(({ key }) => key === name)}
      .units=${units} .value=${this.draft[name]} @entered=${event => this.#set(name, event.detail)}></bw-entry>`;
  }

  #set(name, value) {
    this.draft = { ...this.draft, [name]: value };
  }

  #ask = async ({ reason }) => {
    const { ready } = await checkEntries(this);
    if (!ready) return;
    const field = this.querySelector('bw-field[name="reason"]');
    if (!reason.trim()) {
      field.complaint = t('page.bench.correctionReasonMissing');
      return void field.focus();
    }
    const [distance, angle] = [...this.querySelectorAll('bw-entry')].map(entry => entry.typed);
    this.request = { name: this.draft.name.trim(), lamp: this.draft.lamp, instrument: this.draft.instrument, distance, angle, reason: reason.trim() };
    return { preview: await post(`/api/stations/${this.station.id}/corrections/preview`, this.request), lead: t('page.light.ifSetUp') };
  };

  #write = () => put(`/api/stations/${this.station.id}/corrections/${this.key}`, this.request);

  #pass = ({ type, detail }) => this.dispatchEvent(new CustomEvent(type, { detail }));
}

customElements.define('bw-settings-form', SettingsForm);
