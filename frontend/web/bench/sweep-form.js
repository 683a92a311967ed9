/** A load sweep, row by row in any order: the next resistor named, the curve drawing itself. */
import { prefixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { symbolOf, typedAmount, unitOf } from '../entry/wording.js';
import { html, live, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { back } from './cell-view.js';
import { curve } from './curve.js';
import { correctsTick, latestKnown } from './correcting.js';
import { howTo } from './how-to.js';
import { isEnough, nearPeak, nextLoad } from './loads.js';
import { likelyStation, stationPicker } from './station-picker.js';
import { METER_UNITS, NO_ROW, WAYS, isFilled, pointOf, readRow, sweepPoint, toneOf } from './sweep-rows.js';

const FEWEST = 5;

class SweepForm extends BenchForm {
  static properties = { complaints: { state: true } };

  get draftKey() {
    return `sweep.${this.cellId}`;
  }

  get sendLabel() {
    return t('page.bench.send.sweep');
  }

  start() {
    const rows = [{ ...NO_ROW, load: prefixed(nextLoad([], this.#guessOhm), 'Ω') }];
    return { way: 'loadVoltage', voltageUnit: 'mV', currentUnit: 'uA', rows, stationId: likelyStation(this.data.stations), confirmed: false };
  }

  fields({ way, rows, stationId, confirmed, corrects }) {
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t('page.bench.reading.sweep') })}</h1>
      ${howTo('sweep')}
      ${stationPicker(this.data.stations, stationId, id => this.change('stationId', id))}
      <details class="fold"><summary>${t('page.bench.sweepWayNow', { way: t(`page.bench.sweepWay.${way}`) })}</summary>
        <bw-choices tall .legend=${t('page.bench.sweepWay')} .value=${way} @chosen=${event => this.change('way', event.detail)}
          .options=${Object.keys(WAYS).map(key => ({ key, label: t(`page.bench.sweepWay.${key}`) }))}></bw-choices></details>
      ${WAYS[way].filter(column => METER_UNITS[column]).map(column => this.#unitChoice(column))}
      <div class="sweep" role="group" aria-label=${t('page.bench.reading.sweep')}>
        <div class="sweep-row heads" aria-hidden="true">${WAYS[way].map(column => html`<span>${t(`page.bench.column.${column}`)}, ${this.#symbol(column)}</span>`)}</div>
        ${rows.map((row, i) => this.#row(row, i))}
      </div>
      ${this.#next()}
      ${curve(this.#points)}
      ${this.#unusual ? html`<label class="tick"><input type="checkbox" .checked=${confirmed}
        @change=${event => this.change('confirmed', event.target.checked)}><span>${t('page.bench.sweepUnusual')}</span></label>` : nothing}
      ${correctsTick(latestKnown(this.data, this.cellId, 'sweep'), corrects, this.data.catalogue.units, ticked => this.change('corrects', ticked))}`;
  }

  #unitChoice(column) {
    return html`<bw-choices .legend=${t(`page.bench.sweepUnit.${column}`)} .value=${this.#unit(column)}
      @chosen=${event => this.change(`${column}Unit`, event.detail)}
      .options=${METER_UNITS[column].map(key => ({ key, label: symbolOf(unitOf(key, this.data.catalogue.units)) }))}></bw-choices>`;
  }

  #row(row, i) {
    const verdicts = this.#read(row);
    return html`<div class="sweep-row">${WAYS[this.draft.way].map(column => this.#input(row, i, column, verdicts))}
      <button type="button" class="button plain remove" aria-label=${t('page.bench.removeRow', { row: i + 1 })} @click=${() => this.#remove(i)}><bw-icon name="remove"></bw-icon></button>
      <p class="small" id="row-${i}">${this.#echo(row, i, verdicts)}</p></div>`;
  }

  #input(row, i, column, verdicts) {
    const faulty = this.#tone(row, verdicts) === 'impossible' && verdicts[column].tone !== 'fine' || this.complaints?.[i];
    return html`<span class="field"><input type="text" inputmode="decimal" autocomplete="off" autocorrect="off" spellcheck="false"
      enterkeyhint="next" name="${column}-${i}" aria-label=${t('page.bench.columnInRow', { column: t(`page.bench.column.${column}`), unit: this.#symbol(column), row: i + 1 })}
      aria-describedby="row-${i}" .value=${live(row[column] ?? '')} aria-invalid=${faulty ? 'true' : nothing}
      @input=${event => this.#set(i, column, event.target.value)}></span>`;
  }

  #echo(row, i, verdicts) {
    if (this.complaints?.[i]) return html`<span class="echo impossible"><bw-icon name="impossible"></bw-icon><span>${this.complaints[i]}</span></span>`;
    const tone = this.#tone(row, verdicts);
    if (tone === 'empty') return nothing;
    const words = Object.values(verdicts).map(({ amount }) => (amount ? typedAmount(amount, this.data.catalogue.units) : '?')).join(' · ') + follows(this.draft.way, pointOf(verdicts));
    return html`<span class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${tone === 'impossible' ? t('page.bench.rowWrong', { read: words }) : words}</span></span>`;
  }

  #next() {
    const points = this.#points;
    const next = this.draft.way === 'voltageCurrent' ? null : nextLoad(points, this.#guessOhm);
    return html`<div class="beside">
      ${next ? html`<button type="button" class="button quiet" @click=${() => this.#add(prefixed(next, 'Ω'))}><bw-icon name="add"></bw-icon>${t('page.bench.nextLoad', { load: prefixed(next, 'Ω') })}</button>` : nothing}
      <button type="button" class="button plain" @click=${() => this.#add('')}>${t('page.bench.addRow')}</button></div>
      <p class="soft small" role="status">${isEnough(points) ? t('page.bench.sweepEnough') : points.length ? t('page.bench.sweepSoFar', { points: points.length, near: nearPeak(points) }) : nothing}</p>`;
  }

  #set(i, column, text) {
    this.complaints = { ...this.complaints, [i]: null };
    this.change('rows', this.draft.rows.map((row, at) => (at === i ? { ...row, [column]: text } : row)));
  }

  async #add(load) {
    const empty = this.draft.rows.findIndex(row => !isFilled(row, this.draft.way));
    const row = { ...NO_ROW, load };
    this.change('rows', empty < 0 ? [...this.draft.rows, row] : this.draft.rows.map((each, i) => (i === empty ? row : each)));
    await this.updateComplete;
    const at = empty < 0 ? this.draft.rows.length - 1 : empty;
    this.querySelector(`[name="${WAYS[this.draft.way][load ? 1 : 0]}-${at}"]`)?.focus();
  }

  #remove(i) {
    this.complaints = null;
    this.change('rows', this.draft.rows.filter((_, at) => at !== i));
  }

  /** The server names the point that it refused; it stands at its row. */
  refusedAt(field, detail) {
    const sent = /^points\[(\d+)\]/.exec(field)?.[1];
    if (sent === undefined) return false;
    const i = this.draft.rows.indexOf(this.#filled[sent]);
    this.complaints = { [i]: detail };
    this.querySelector(`[name="${WAYS[this.draft.way][1]}-${i}"]`)?.focus();
    return i >= 0;
  }

  #unit = column => (column === 'load' ? 'ohm' : this.draft[`${column}Unit`] ?? METER_UNITS[column][0]);

  #symbol(column) {
    return symbolOf(unitOf(this.#unit(column), this.data.catalogue.units));
  }

  #read(row) {
    return readRow(row, this.draft.way, { units: this.data.catalogue.units, unitOf: this.#unit, fieldOf: column => this.data.field(column) });
  }

  #tone(row, verdicts = this.#read(row)) {
    return toneOf(row, this.draft.way, verdicts);
  }

  /** Voc/Isc of the latest light reading: near it lies the best load of any cell. */
  get #guessOhm() {
    const light = this.data.readings(this.cellId).filter(({ kind, currentA }) => kind === 'light' && currentA > 0).at(-1);
    return light?.voltageV > 0 ? light.voltageV / light.currentA : null;
  }

  get #filled() {
    return this.draft.rows.filter(row => isFilled(row, this.draft.way));
  }

  get #points() {
    return this.#filled.map(row => pointOf(this.#read(row))).filter(Boolean);
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

  toEntry({ stationId, way, corrects }) {
    const id = this.entryId;
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: 'sweep', stationId, voltage: null, current: null,
        points: this.#filled.map(row => sweepPoint(row, way, this.#unit)),
        unusualConfirmed: this.#unusual, replaces: corrects ? latestKnown(this.data, this.cellId, 'sweep')?.id ?? null : null, noticedAt: new Date().toISOString(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: 'sweep' },
    };
  }
}

/** What follows by Ohm's law from the two that were typed. */
function follows(way, point) {
  if (!point) return '';
  const texts = { load: [point.ohm, 'Ω'], voltage: [point.voltageV, 'V'], current: [point.currentA, 'A'] };
  const [missing] = Object.keys(texts).filter(column => !WAYS[way].includes(column));
  return ` → ${prefixed(...texts[missing])}`;
}

customElements.define('bw-sweep-form', SweepForm);
