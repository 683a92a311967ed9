/** A load sweep of a cell, new or with its rows mended, the curve drawing itself. */
import { serverClock } from '../core/clock.js';
import { prefixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { back } from './cell-view.js';
import { mendLatest, reasonField, unusualTick } from './correcting.js';
import { curve } from './curve.js';
import { howTo } from './how-to.js';
import { nextLoad } from './loads.js';
import { likelyStation, stationPicker } from './station-picker.js';
import { Sweep } from './sweep.js';
import { draftOfReading } from './sweep-again.js';
import './sweep-from-file.js';
import { NO_ROW } from './sweep-rows.js';
import './sweep-table.js';

/** `part` is the id of the sweep to correct, empty for a new one. */
class SweepForm extends BenchForm {
  static properties = { complaints: { state: true } };

  get draftKey() {
    return `sweep.${[this.cellId, this.part].filter(Boolean).join('.')}`;
  }

  get sendLabel() {
    return t(this.part ? 'page.bench.send.again.sweep' : 'page.bench.send.sweep');
  }

  start() {
    const wrong = this.part && this.data.allReadings(this.cellId).find(({ id }) => id === this.part);
    if (wrong) return { ...draftOfReading(wrong, this.data.catalogue.units), stationId: wrong.stationId, confirmed: wrong.unusualConfirmed, reason: '' };
    const rows = [{ ...NO_ROW, load: prefixed(nextLoad([], this.#guessOhm), 'Ω') }];
    return { way: 'loadVoltage', voltageUnit: 'mV', currentUnit: 'uA', rows, stationId: likelyStation(this.data.stations), confirmed: false, reason: '' };
  }

  fields({ stationId, confirmed, reason }) {
    const sweep = this.#sweep;
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t(this.part ? 'page.bench.again.sweep' : 'page.bench.reading.sweep') })}</h1>
      ${this.part ? html`<p>${t('page.bench.againLead')}</p>` : html`${howTo('sweep')}${mendLatest(this.data, this.cellId, 'sweep')}`}
      ${stationPicker(this.data.stations, stationId, id => this.change('stationId', id))}
      <bw-sweep-from-file .catalogue=${this.data.catalogue} @read=${({ detail }) => this.#take(detail)}></bw-sweep-from-file>
      <bw-sweep-table .sweep=${sweep} .complaints=${this.complaints} .guessOhm=${this.#guessOhm} @changed=${({ detail }) => this.change(detail.key, detail.value)}></bw-sweep-table>
      ${curve(sweep.points)}
      ${sweep.unusual ? unusualTick(confirmed, ticked => this.change('confirmed', ticked)) : nothing}
      ${this.part ? reasonField(reason, words => this.change('reason', words)) : nothing}`;
  }

  /** The server names the point that it refused; it stands at its row. */
  refusedAt(field, detail) {
    const sent = /^points\[(\d+)\]/.exec(field)?.[1];
    if (sent === undefined) return false;
    const i = this.#sweep.rowOfSent(sent);
    this.complaints = { [i]: detail };
    this.querySelector('bw-sweep-table')?.focusRow(i);
    return i >= 0;
  }

  /** The rows of a logger's file stand where typed ones would. */
  #take({ rows, voltageUnit, currentUnit }) {
    this.complaints = null;
    this.change('way', 'voltageCurrent');
    this.change('voltageUnit', voltageUnit);
    this.change('currentUnit', currentUnit);
    this.change('rows', rows.map(row => ({ ...NO_ROW, ...row })));
  }

  get #sweep() {
    return new Sweep(this.draft, this.data.catalogue);
  }

  /** Voc/Isc of the latest light reading: near it lies the best load of any cell. */
  get #guessOhm() {
    const light = this.data.readings(this.cellId).filter(({ kind, currentA }) => kind === 'light' && currentA > 0).at(-1);
    return light?.voltageV > 0 ? light.voltageV / light.currentA : null;
  }

  missing({ stationId, reason }) {
    if (!stationId) return t('page.bench.stationMissing');
    return this.#sweep.trouble ?? (this.part && !reason.trim() ? t('page.bench.correctionReasonMissing') : null);
  }

  toEntry({ stationId, reason }) {
    const id = this.entryId;
    const sweep = this.#sweep;
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: 'sweep', stationId, voltage: null, current: null, points: sweep.sent,
        unusualConfirmed: sweep.unusual, replaces: this.part || null, reason: this.part ? reason.trim() : null, noticedAt: serverClock.stamp(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: 'sweep' },
    };
  }
}

customElements.define('bw-sweep-form', SweepForm);
