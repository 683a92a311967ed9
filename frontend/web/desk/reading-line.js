/** One reading in a cell's story, and what a teacher may do about it. */
import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { clock } from '../core/format.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import '../entry/entry.js';
import { checkEntries } from '../entry/check.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { correctedWords, readingWords, setAsideReason } from '../bench/words.js';
import { isInRows } from './rows-correction.js';

/**
 * `reading` as the server answers it, `flags` the matters of the attention list about it, `fixed` while results are final.
 * Fires `changed`.
 */
class ReadingLine extends PageElement {
  static properties = {
    reading: { attribute: false }, catalogue: { attribute: false }, station: { attribute: false }, flags: { attribute: false },
    dayId: {}, fixed: { type: Boolean }, doing: { state: true }, typed: { state: true },
  };

  constructor() {
    super();
    this.#begin(null);
  }

  get setAside() {
    return setAsideReason(this.reading);
  }

  render() {
    const { reading } = this;
    return html`<div class="story-line ${reading.replacedBy || this.setAside ? 'out' : ''}">
      <bw-icon name=${reading.kind}></bw-icon>
      <div class="flow-tight"><p><strong>${t(`page.bench.reading.${reading.kind}`)}</strong> ${this.station ? html`<span class="soft">${this.station.name}</span>` : nothing}</p>
        <p class="number-line">${readingWords(reading, this.catalogue.units)}</p>
        ${reading.replacedBy ? html`<p class="soft small">${t('page.desk.corrected')}</p>` : nothing}
        ${correctedWords(reading) ? html`<p class="soft small">${correctedWords(reading)}</p>` : nothing}
        ${this.setAside ? html`<p class="small"><span class="tag unusual">${t('page.desk.setAside')}</span> ${this.setAside}</p>` : nothing}
        ${reading.setAside.length > 1 || reading.setAside.length && !this.setAside ? this.#history() : nothing}
        ${this.flags.map(flag => html`<p class="small"><span class="tag unusual"><bw-icon name="unusual"></bw-icon>${t(`page.desk.attention.${flag.key}`, flag.values)}</span></p>`)}
        ${reading.replacedBy || this.fixed ? nothing : this.#actions()}</div></div>`;
  }

  #history() {
    return html`<ul class="bare soft small">${this.reading.setAside.map(each => html`<li>${clock(each.at)} ${each.teacher}:
      ${each.reason ? t('page.desk.setAsideWhy', { reason: each.reason }) : t('page.desk.takenBack')}</li>`)}</ul>`;
  }

  #actions() {
    if (this.doing === 'correct') return isInRows(this.reading.kind) ? this.#rows() : this.#correction();
    if (this.doing === 'aside') return this.#reason();
    const tellsWhich = t('page.desk.ofReading', { reading: t(`page.bench.reading.${this.reading.kind}`), time: clock(this.reading.readAt) });
    return html`<div class="steps">
      ${this.setAside ? nothing : this.#button('page.desk.correct', tellsWhich, () => this.#begin('correct'))}
      ${this.setAside ? this.#button('page.desk.takeBackReading', tellsWhich, () => this.#write(null)) : this.#button('page.desk.setAsideDo', tellsWhich, () => this.#begin('aside'))}
      ${this.flags.length ? this.#button('page.desk.looksRight', tellsWhich, () => this.#accept()) : nothing}</div>`;
  }

  #button = (key, about, act) => html`<button class="button plain" aria-label="${t(key)}: ${about}" @click=${act}>${t(key)}</button>`;

  #reason() {
    return html`<bw-form .label=${t('page.desk.setAsideDo')} .send=${({ reason }) => this.#write(reason)} .fields=${html`
      <bw-field name="reason" maxlength="120" .label=${t('page.desk.setAsideReason')} .hint=${t('page.desk.setAsideHint')}></bw-field>`}></bw-form>
      ${this.#notNow()}`;
  }

  #rows() {
    return html`<bw-rows-correction .reading=${this.reading} .catalogue=${this.catalogue} @corrected=${() => this.#done()}></bw-rows-correction>
      ${this.#notNow()}`;
  }

  #correction() {
    const { kind } = this.reading;
    return html`<bw-form .label=${t('page.desk.correctSend')} .send=${this.#correct} .fields=${html`
      ${this.#entry('voltage', `page.bench.voltage.${kind}`)}${this.#entry('current', `page.bench.current.${kind}`)}
      ${kind === 'dark' ? html`${this.#entry('swappedVoltage', 'page.bench.voltage.swapped')}${this.#entry('swappedCurrent', 'page.bench.current.swapped')}` : nothing}
      <bw-field name="reason" maxlength="120" .label=${t('page.bench.correctionReason')} .hint=${t('page.desk.correctionReasonHint')}></bw-field>`}></bw-form>
      ${this.#notNow()}`;
  }

  #entry(name, label) {
    const { fields, units } = this.catalogue;
    const key = /voltage/i.test(name) ? 'voltage' : 'current';
    return html`<bw-entry ?optional=${name !== key} .name=${name} .label=${t(label)} .field=${fields.find(field => field.key === key)} .units=${units}
      .value=${this.typed[name] ?? this.reading[name] ?? {}} @entered=${event => { this.typed = { ...this.typed, [name]: event.detail }; }}></bw-entry>`;
  }

  #notNow = () => html`<button class="button plain" @click=${() => this.#begin(null)}>${t('page.desk.notNow')}</button>`;

  #begin(doing) {
    this.doing = doing;
    this.typed = {};
    this.key = newId();
    if (doing) this.updateComplete.then(() => this.querySelector('bw-field, bw-entry')?.focus());
  }

  /** A pair of leads that no meter's zero explains is kept as it is: the teacher has just looked at it. */
  #correct = async ({ reason }) => {
    const { ready, unusual } = await checkEntries(this);
    if (!ready) return;
    const [voltage, current, swappedVoltage = null, swappedCurrent = null] = [...this.querySelectorAll('bw-entry')].map(entry => entry.typed);
    await put(`/api/readings/${this.key}`, {
      cellId: this.reading.cellId, kind: this.reading.kind, stationId: this.reading.stationId, voltage, current, swappedVoltage, swappedCurrent, points: null,
      unusualConfirmed: unusual || swappedVoltage != null || swappedCurrent != null, replaces: this.reading.id, reason: reason.trim() || null, noticedAt: serverClock.stamp(),
    });
    this.#done();
  };

  async #write(reason) {
    await put(`/api/set-asides/${this.key}`, { readingId: this.reading.id, reason });
    this.#done();
  }

  /** For the rest of the day: the teacher has looked at it. */
  async #accept() {
    for (const flag of this.flags) await put(`/api/labdays/${this.dayId}/desk/put-off`, { item: flag.id, minutes: 1440 });
    this.#done();
  }

  #done() {
    this.#begin(null);
    this.dispatchEvent(new CustomEvent('changed', { bubbles: true }));
  }
}

customElements.define('bw-reading-line', ReadingLine);
