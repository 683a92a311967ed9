import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html } from '../kit/kit.js';

/** A new light station: its lamp, what reads it, how far away and at which angle. Fires `saved`. */
class StationForm extends PageElement {
  static properties = {
    labDayId: {}, catalogue: { attribute: false },
    lamp: { state: true }, instrument: { state: true }, distance: { state: true }, angle: { state: true },
  };

  constructor() {
    super();
    this.key = newId();
    this.distance = {};
    this.angle = {};
  }

  render() {
    this.lamp ??= this.catalogue.lamps[0];
    this.instrument ??= this.catalogue.instruments[0];
    return html`<bw-form .label=${t('page.light.makeSend')} .send=${this.#send} .fields=${html`
      <bw-field name="name" maxlength="24" .label=${t('page.light.name')} .hint=${t('page.light.nameHint')}></bw-field>
      ${this.#choice('lamp', this.catalogue.lamps)}
      ${this.#choice('instrument', this.catalogue.instruments)}
      ${this.#amount('distance')}
      ${this.#amount('angle')}`}></bw-form>`;
  }

  #choice(name, keys) {
    return html`<bw-choices .legend=${t(`page.light.${name}`)} .value=${this[name]}
      .options=${keys.map(key => ({ key, label: t(`catalogue.${name}.${key}`) }))}
      @chosen=${event => { this[name] = event.detail; }}></bw-choices>`;
  }

  #amount(name) {
    const { fields, units } = this.catalogue;
    return html`<bw-entry optional name=${name} .label=${t(`page.light.${name}`)} .field=${fields.find(({ key }) => key === name)}
      .units=${units} .value=${this[name]} @entered=${event => { this[name] = event.detail; }}></bw-entry>`;
  }

  #send = async ({ name }) => {
    const entries = [...this.querySelectorAll('bw-entry')];
    const faulty = entries.filter(entry => !entry.check().ready);
    if (faulty.length > 0) return faulty[0].focus();
    const [distance, angle] = entries.map(entry => entry.typed);
    await put(`/api/stations/${this.key}`, {
      labDayId: this.labDayId, name: name.trim(), lamp: this.lamp, instrument: this.instrument, distance, angle,
    });
    this.dispatchEvent(new CustomEvent('saved'));
  };
}

customElements.define('bw-station-form', StationForm);
