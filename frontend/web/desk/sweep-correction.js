/** The rows of a sweep mended by the teacher; the curve shows at once whether they fit. */
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { curve } from '../bench/curve.js';
import { Sweep } from '../bench/sweep.js';
import { draftOfReading } from '../bench/sweep-again.js';
import '../bench/sweep-table.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** `reading` as the server answers it. Fires `corrected`. */
class SweepCorrection extends PageElement {
  static properties = {
    reading: { attribute: false }, catalogue: { attribute: false },
    draft: { state: true }, trouble: { state: true }, complaints: { state: true },
  };

  constructor() {
    super();
    this.key = newId();
  }

  willUpdate() {
    this.draft ??= { ...draftOfReading(this.reading, this.catalogue.units), confirmed: this.reading.unusualConfirmed };
  }

  render() {
    const sweep = new Sweep(this.draft, this.catalogue);
    return html`<bw-form .label=${t('page.desk.correctSend')} .send=${this.#send} .fields=${html`
      <bw-sweep-table .sweep=${sweep} .complaints=${this.complaints} @changed=${({ detail }) => this.#set(detail.key, detail.value)}></bw-sweep-table>
      ${curve(sweep.points)}
      ${sweep.unusual ? html`<label class="tick"><input type="checkbox" .checked=${this.draft.confirmed}
        @change=${event => this.#set('confirmed', event.target.checked)}><span>${t('page.bench.sweepUnusual')}</span></label>` : nothing}
      <bw-field name="reason" maxlength="120" .label=${t('page.bench.correctionReason')} .hint=${t('page.desk.correctionReasonHint')}></bw-field>
      ${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}`}></bw-form>`;
  }

  #set(key, value) {
    this.trouble = null;
    this.draft = { ...this.draft, [key]: value };
  }

  #send = async ({ reason }) => {
    const sweep = new Sweep(this.draft, this.catalogue);
    this.trouble = sweep.trouble ?? (reason.trim() ? null : t('page.bench.correctionReasonMissing'));
    if (this.trouble) return;
    const { reading } = this;
    try {
      await put(`/api/readings/${this.key}`, {
        cellId: reading.cellId, kind: 'sweep', stationId: reading.stationId, voltage: null, current: null, points: sweep.sent,
        unusualConfirmed: sweep.unusual, replaces: reading.id, reason: reason.trim(), noticedAt: new Date().toISOString(),
      });
    } catch (error) {
      this.#complainAtRow(sweep, error);
      throw error;
    }
    this.dispatchEvent(new CustomEvent('corrected'));
  };

  /** The server names the point that it refused; it stands at its row. */
  #complainAtRow(sweep, { field, detail }) {
    const sent = /^points\[(\d+)\]/.exec(field ?? '')?.[1];
    if (sent !== undefined) this.complaints = { [sweep.rowOfSent(sent)]: detail };
  }
}

customElements.define('bw-sweep-correction', SweepCorrection);
