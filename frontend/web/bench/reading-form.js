/** A dark or a light reading, as the meter shows it. */
import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { caution } from './caution.js';
import { back } from './cell-view.js';
import { correctsTick, latestKnown } from './correcting.js';
import { howTo } from './how-to.js';
import { leadsEcho, pairsOf, swappedKey } from './leads.js';
import { likelyStation, stationPicker } from './station-picker.js';
import '../entry/entry.js';

const QUANTITIES = ['voltage', 'current'];

/** `part` is dark or light. */
class ReadingForm extends BenchForm {
  get draftKey() {
    return `${this.part}.${this.cellId}`;
  }

  get sendLabel() {
    return t(`page.bench.send.${this.part}`);
  }

  /** The latest reading of this kind that the server knows, for a correction. */
  get earlier() {
    return latestKnown(this.data, this.cellId, this.part);
  }

  start() {
    return { voltage: {}, current: {}, stationId: likelyStation(this.data.stations), corrects: false };
  }

  fields({ voltage, current, stationId, corrects }) {
    const { part: kind, earlier } = this;
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t(`page.bench.reading.${kind}`) })}</h1>
      ${howTo(kind)}
      ${caution(this.data.catalogue.stages.find(stage => stage.key === 'measure'), this.cell)}
      ${kind === 'light' ? stationPicker(this.data.stations, stationId, id => this.change('stationId', id)) : nothing}
      ${this.#number('voltage', voltage, t(`page.bench.voltage.${kind}`))}
      ${this.#number('current', current, t(`page.bench.current.${kind}`), kind === 'light')}
      ${kind === 'dark' ? this.#bothWays() : nothing}
      ${correctsTick(earlier, corrects, this.data.catalogue.units, ticked => this.change('corrects', ticked))}`;
  }

  #number(key, value, label, last = false) {
    return html`<bw-entry .name=${key} .label=${label} .field=${this.data.field(key)} .units=${this.data.catalogue.units}
      .value=${value} ?last=${last} @entered=${event => this.change(key, event.detail)}></bw-entry>`;
  }

  /** The same with the leads swapped; may be left out. */
  #bothWays() {
    return html`<details class="fold" ?open=${QUANTITIES.some(key => this.draft[swappedKey(key)]?.text)}><summary>${t('page.bench.leads.title')}</summary>
      <div class="flow"><p>${t('page.bench.leads.how')}</p>
        ${QUANTITIES.map((key, i) => html`<bw-entry optional .name=${swappedKey(key)} .label=${t(`page.bench.${key}.swapped`)} .field=${this.data.field(key)} .units=${this.data.catalogue.units}
          .value=${this.draft[swappedKey(key)] ?? {}} ?last=${i > 0} @entered=${event => this.change(swappedKey(key), event.detail)}></bw-entry>`)}
        ${leadsEcho(this.#pairs, this.draft.leadsConfirmed, ticked => this.change('leadsConfirmed', ticked))}</div></details>`;
  }

  get #pairs() {
    return this.part === 'dark' ? pairsOf(this.draft, this.data.catalogue) : [];
  }

  get #doubtful() {
    return this.#pairs.some(([, { consistent }]) => !consistent);
  }

  missing({ stationId, leadsConfirmed }) {
    if (this.part === 'light' && !stationId) return t('page.bench.stationMissing');
    return this.#doubtful && !leadsConfirmed ? t('page.bench.leads.look') : null;
  }

  toEntry({ stationId, corrects }, unusual) {
    const id = this.entryId;
    const [voltage, current, swappedVoltage = null, swappedCurrent = null] = [...this.querySelectorAll('bw-entry')].map(entry => entry.typed);
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: this.part, stationId: this.part === 'light' ? stationId : null, voltage, current, swappedVoltage, swappedCurrent, points: null,
        unusualConfirmed: unusual || this.#doubtful, replaces: corrects ? this.earlier?.id ?? null : null, noticedAt: serverClock.stamp(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: this.part },
    };
  }
}

customElements.define('bw-reading-form', ReadingForm);
