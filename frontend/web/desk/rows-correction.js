/** The rows of a sweep or of light toggles mended by the teacher; the echoes, and a sweep's curve, show at once whether they fit. */
import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { unusualTick } from '../bench/correcting.js';
import { curve } from '../bench/curve.js';
import { Sweep } from '../bench/sweep.js';
import { draftOfReading } from '../bench/sweep-again.js';
import '../bench/sweep-table.js';
import { Toggles, draftOfToggles } from '../bench/toggles.js';
import '../bench/toggles-table.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** For each kind: the draft of a reading, what it means, and its table. */
const KINDS = {
  sweep: {
    draftOf: draftOfReading,
    rowsOf: (draft, catalogue) => new Sweep(draft, catalogue),
    table: (sweep, complaints, change) => html`<bw-sweep-table .sweep=${sweep} .complaints=${complaints} @changed=${change}></bw-sweep-table>
      ${curve(sweep.points)}`,
  },
  toggles: {
    draftOf: draftOfToggles,
    rowsOf: (draft, catalogue) => new Toggles(draft, catalogue),
    table: (toggles, complaints, change) => html`<bw-toggles-table .toggles=${toggles} .complaints=${complaints} @changed=${change}></bw-toggles-table>`,
  },
};

export const isInRows = kind => kind in KINDS;

/** `reading` as the server answers it. Fires `corrected`. */
class RowsCorrection extends PageElement {
  static properties = {
    reading: { attribute: false }, catalogue: { attribute: false },
    draft: { state: true }, trouble: { state: true }, complaints: { state: true },
  };

  constructor() {
    super();
    this.key = newId();
  }

  get #kind() {
    return KINDS[this.reading.kind];
  }

  willUpdate() {
    this.draft ??= { ...this.#kind.draftOf(this.reading, this.catalogue.units), confirmed: this.reading.unusualConfirmed };
  }

  render() {
    const rows = this.#kind.rowsOf(this.draft, this.catalogue);
    return html`<bw-form .label=${t('page.desk.correctSend')} .send=${this.#send} .fields=${html`
      ${this.#kind.table(rows, this.complaints, ({ detail }) => this.#set(detail.key, detail.value))}
      ${rows.unusual ? unusualTick(this.draft.confirmed, ticked => this.#set('confirmed', ticked)) : nothing}
      <bw-field name="reason" maxlength="120" .label=${t('page.bench.correctionReason')} .hint=${t('page.desk.correctionReasonHint')}></bw-field>
      ${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}`}></bw-form>`;
  }

  #set(key, value) {
    this.trouble = null;
    this.complaints = null;
    this.draft = { ...this.draft, [key]: value };
  }

  #send = async ({ reason }) => {
    const rows = this.#kind.rowsOf(this.draft, this.catalogue);
    this.trouble = rows.trouble ?? (reason.trim() ? null : t('page.bench.correctionReasonMissing'));
    if (this.trouble) return;
    const { reading } = this;
    try {
      await put(`/api/readings/${this.key}`, {
        cellId: reading.cellId, kind: reading.kind, stationId: reading.stationId, voltage: null, current: null, points: rows.sent,
        unusualConfirmed: rows.unusual, replaces: reading.id, reason: reason.trim(), noticedAt: serverClock.stamp(),
      });
    } catch (error) {
      this.#complainAtRow(rows, error);
      throw error;
    }
    this.dispatchEvent(new CustomEvent('corrected'));
  };

  /** The server names the number that it refused; the sentence stands at its row. */
  #complainAtRow(rows, { field, detail }) {
    const sent = /^points\[(\d+)\]/.exec(field ?? '')?.[1];
    if (sent !== undefined) this.complaints = { [rows.rowOfSent(sent)]: detail };
  }
}

customElements.define('bw-rows-correction', RowsCorrection);
