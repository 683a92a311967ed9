/** Light toggles: the cell covered and opened in turn, three times. What is the light's comes and goes with it. New, or with numbers mended. */
import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { back } from './cell-view.js';
import { mendLatest, reasonField, unusualTick } from './correcting.js';
import { howTo } from './how-to.js';
import { likelyStation, stationPicker } from './station-picker.js';
import { Toggles, draftOfToggles, noToggles } from './toggles.js';
import './toggles-table.js';

/** `part` is the id of the toggles to correct, empty for new ones. */
class TogglesForm extends BenchForm {
  static properties = { complaints: { state: true } };

  get draftKey() {
    return `toggles.${[this.cellId, this.part].filter(Boolean).join('.')}`;
  }

  get sendLabel() {
    return t(this.part ? 'page.bench.send.again.toggles' : 'page.bench.send.toggles');
  }

  start() {
    const wrong = this.part && this.data.allReadings(this.cellId).find(({ id }) => id === this.part);
    if (wrong) return { ...draftOfToggles(wrong, this.data.catalogue.units), stationId: wrong.stationId, confirmed: wrong.unusualConfirmed, reason: '' };
    return { ...noToggles(), stationId: likelyStation(this.data.stations), confirmed: false, reason: '' };
  }

  fields({ stationId, confirmed, reason }) {
    const toggles = this.#toggles;
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t(this.part ? 'page.bench.again.toggles' : 'page.bench.reading.toggles') })}</h1>
      ${this.part ? html`<p>${t('page.bench.againLead')}</p>` : html`${howTo('toggles')}${mendLatest(this.data, this.cellId, 'toggles')}`}
      ${stationPicker(this.data.stations, stationId, id => this.change('stationId', id))}
      <bw-toggles-table .toggles=${toggles} .complaints=${this.complaints} @changed=${({ detail }) => this.change(detail.key, detail.value)}></bw-toggles-table>
      ${toggles.unusual ? unusualTick(confirmed, ticked => this.change('confirmed', ticked)) : nothing}
      ${this.part ? reasonField(reason, words => this.change('reason', words)) : nothing}`;
  }

  /** The server names the number that it refused; the sentence stands at its pair. */
  refusedAt(field, detail) {
    const sent = /^points\[(\d+)\]/.exec(field)?.[1];
    if (sent === undefined) return false;
    const pair = this.#toggles.rowOfSent(sent);
    this.complaints = { [pair]: detail };
    this.querySelector('bw-toggles-table')?.focusRow(pair);
    return true;
  }

  get #toggles() {
    return new Toggles(this.draft, this.data.catalogue);
  }

  missing({ stationId, reason }) {
    if (!stationId) return t('page.bench.stationMissing');
    return this.#toggles.trouble ?? (this.part && !reason.trim() ? t('page.bench.correctionReasonMissing') : null);
  }

  toEntry({ stationId, reason }) {
    const id = this.entryId;
    const toggles = this.#toggles;
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: 'toggles', stationId, voltage: null, current: null, points: toggles.sent,
        unusualConfirmed: toggles.unusual, replaces: this.part || null, reason: this.part ? reason.trim() : null, noticedAt: serverClock.stamp(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: 'toggles' },
    };
  }
}

customElements.define('bw-toggles-form', TogglesForm);
