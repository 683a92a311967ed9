/** A refill or a repair of a finished cell: it stays the same cell, and its record says what was done. */
import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { caution } from './caution.js';
import { back } from './cell-view.js';

const KINDS = ['refill', 'repair'];

class WorkForm extends BenchForm {
  get draftKey() {
    return `work.${this.cellId}`;
  }

  get sendLabel() {
    return t('page.bench.recordSend');
  }

  start() {
    return { kind: KINDS[0], note: '' };
  }

  fields({ kind, note }) {
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.workOn', { label: this.cell.label })}</h1>
      <p>${t('page.bench.workLead')}</p>
      ${caution(this.data.catalogue.stages.find(stage => stage.key === 'fill'), this.cell)}
      <bw-choices tall name="kind" .legend=${t('page.bench.workKind')} .value=${kind} @chosen=${event => this.change('kind', event.detail)}
        .options=${KINDS.map(key => ({ key, label: t(`page.bench.work.${key}`) }))}></bw-choices>
      <bw-field name="note" maxlength="200" .label=${t('page.bench.note')} .hint=${t('page.bench.noteHint')} .value=${note}
        @typed=${event => this.change('note', event.detail)}></bw-field>`;
  }

  toEntry({ kind, note }) {
    const id = this.entryId;
    return {
      id, path: `/api/cell-events/${id}`,
      body: { cellId: this.cellId, kind, note: note.trim() || null, noticedAt: serverClock.stamp() },
      about: { kind: 'event', cellId: this.cellId, label: this.cell.label, work: kind },
    };
  }
}

customElements.define('bw-work-form', WorkForm);
