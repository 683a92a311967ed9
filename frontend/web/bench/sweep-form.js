/** A load sweep: the voltage across known resistors, row by row, open to short. */
import { judge, settle } from '../core/plausibility.js';
import { readNumber } from '../core/quantity.js';
import { t } from '../core/texts.js';
import { html, live, nothing } from '../kit/kit.js';
import { symbolOf, typedAmount, unitOf } from '../entry/wording.js';
import { BenchForm } from './bench-form.js';
import { back } from './cell-view.js';
import { howTo } from './how-to.js';
import { likelyStation, stationPicker } from './station-picker.js';

/** Half-decade steps, a first look at any cell (common practice, no source). */
const LOADS = ['10', '33', '100', '330', '1000', '3300', '10000', '33000', '100000'];
const FEWEST = 5;
const VOLTAGES = ['mV', 'V'];

class SweepForm extends BenchForm {
  get draftKey() {
    return `sweep.${this.cellId}`;
  }

  get sendLabel() {
    return t('page.bench.send.sweep');
  }

  start() {
    const rows = LOADS.map(load => ({ load, voltage: '' }));
    return { rows, unit: VOLTAGES[0], stationId: likelyStation(this.data.stations), confirmed: false };
  }

  fields({ rows, unit, stationId, confirmed }) {
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t('page.bench.reading.sweep') })}</h1>
      ${howTo('sweep')}
      ${stationPicker(this.data.stations, stationId, id => this.change('stationId', id))}
      <bw-choices .legend=${t('page.bench.sweepUnit')} .value=${unit} @chosen=${event => this.change('unit', event.detail)}
        .options=${VOLTAGES.map(key => ({ key, label: symbolOf(unitOf(key, this.data.catalogue.units)) }))}></bw-choices>
      <table class="sweep"><caption class="unseen">${t('page.bench.reading.sweep')}</caption>
        <thead><tr><th scope="col">${t('page.bench.load')}</th><th scope="col">${t('page.bench.voltage.sweep')}</th>
          <th scope="col"><span class="unseen">${t('page.bench.understood')}</span></th></tr></thead>
        <tbody>${rows.map((row, i) => this.#row(row, i))}</tbody></table>
      <button type="button" class="button quiet" @click=${() => this.change('rows', [...rows, { load: '', voltage: '' }])}>
        <bw-icon name="add"></bw-icon>${t('page.bench.addRow')}</button>
      ${this.#unusual ? html`<label class="tick"><input type="checkbox" .checked=${confirmed}
        @change=${event => this.change('confirmed', event.target.checked)}><span>${t('page.bench.sweepUnusual')}</span></label>` : nothing}`;
  }

  #row(row, i) {
    return html`<tr><td>${this.#cellInput(row, i, 'load', t('page.bench.loadRow', { row: i + 1 }))}</td>
      <td>${this.#cellInput(row, i, 'voltage', t('page.bench.voltageRow', { load: row.load }))}</td>
      <td class="small" id="row-${i}">${this.#echo(row)}</td></tr>`;
  }

  #cellInput(row, i, key, label) {
    return html`<span class="field"><input type="text" inputmode="decimal" autocomplete="off" autocorrect="off" spellcheck="false"
      enterkeyhint="next" aria-label=${label} aria-describedby="row-${i}" .value=${live(row[key])}
      aria-invalid=${this.#tone(row) === 'impossible' ? 'true' : nothing} @input=${event => this.#set(i, key, event.target.value)}></span>`;
  }

  #set(i, key, value) {
    this.change('rows', this.draft.rows.map((row, at) => (at === i ? { ...row, [key]: value } : row)));
  }

  #echo(row) {
    const tone = this.#tone(row);
    if (tone === 'empty') return nothing;
    const { load, voltage } = this.#read(row);
    const { units } = this.data.catalogue;
    const words = [load, voltage].map(each => (each.kind === 'understood' ? typedAmount(each.amounts[0], units) : '?')).join(' · ');
    return html`<span class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${words}</span></span>`;
  }

  #read({ load, voltage }) {
    const { units } = this.data.catalogue;
    return {
      load: settle(this.data.field('load'), readNumber(load, 'ohm', ['resistance'], units)),
      voltage: settle(this.data.field('voltage'), readNumber(voltage, this.draft.unit, ['voltage'], units)),
    };
  }

  #tone(row) {
    if (row.voltage.trim() === '') return 'empty';
    const tones = Object.entries(this.#read(row)).map(([key, read]) => (read.kind === 'understood'
      ? this.#verdict(key, read.amounts[0]) : 'impossible'));
    return ['impossible', 'unusual'].find(tone => tones.includes(tone)) ?? 'fine';
  }

  /** A voltage across no load tells no current. */
  #verdict(key, amount) {
    return key === 'load' && amount.valueSi === 0 ? 'impossible' : judge(this.data.field(key), amount, this.data.catalogue.units).verdict;
  }

  get #filled() {
    return this.draft.rows.filter(row => row.voltage.trim() !== '');
  }

  get #unusual() {
    return this.#filled.some(row => this.#tone(row) === 'unusual');
  }

  missing({ stationId, confirmed }) {
    if (!stationId) return t('page.bench.stationMissing');
    if (this.#filled.some(row => this.#tone(row) === 'impossible')) return t('page.bench.sweepWrong');
    if (this.#filled.length < FEWEST) return t('page.bench.sweepShort', { fewest: FEWEST });
    return this.#unusual && !confirmed ? t('page.bench.sweepConfirm') : null;
  }

  toEntry({ stationId, unit }) {
    const id = this.entryId;
    const points = this.#filled.map(({ load, voltage }) => ({ load: { text: load, unit: 'ohm' }, voltage: { text: voltage, unit }, current: null }));
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: 'sweep', stationId, voltage: null, current: null, points,
        unusualConfirmed: this.#unusual, replaces: null, noticedAt: new Date().toISOString(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: 'sweep' },
    };
  }
}

customElements.define('bw-sweep-form', SweepForm);
