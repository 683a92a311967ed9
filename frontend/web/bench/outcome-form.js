/** How a stage ended. A failure is as welcome as a success: it stays in the class's results. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { caution } from './caution.js';
import { back } from './cell-view.js';
import { standingOutcomes } from './progress.js';

/** `part` is the stage's key. */
class OutcomeForm extends BenchForm {
  get draftKey() {
    return `outcome.${this.cellId}.${this.part}`;
  }

  get sendLabel() {
    return t('page.bench.recordSend');
  }

  get stage() {
    return this.data.catalogue.stages.find(stage => stage.key === this.part);
  }

  get earlier() {
    return standingOutcomes(this.cell).get(this.part) ?? null;
  }

  start() {
    const { passed, failure, note } = this.earlier ?? {};
    return { passed: passed === undefined ? '' : passed ? 'yes' : 'no', failure: failure ?? '', note: note ?? '' };
  }

  fields({ passed, failure, note }) {
    const { stage } = this;
    const name = t(`catalogue.stage.${stage.key}`);
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.outcomeOf', { label: this.cell.label, stage: name })}</h1>
      ${caution(stage)}
      <bw-choices name="passed" .legend=${t('page.bench.howDidItGo')} .value=${passed} @chosen=${event => this.change('passed', event.detail)}
        .options=${[{ key: 'yes', label: t('page.bench.worked') }, { key: 'no', label: t('page.bench.failed') }]}></bw-choices>
      ${passed === 'no' ? html`<bw-choices tall name="failure" .legend=${t('page.bench.whatFailed')} .value=${failure}
        @chosen=${event => this.change('failure', event.detail)}
        .options=${stage.failures.map(key => ({ key, label: t(`catalogue.failure.${key}`) }))}></bw-choices>
        <p class="soft">${t('page.bench.failureCounts')}</p>` : nothing}
      <bw-field name="note" maxlength="200" .label=${t('page.bench.note')} .hint=${t('page.bench.noteHint')} .value=${note}
        @typed=${event => this.change('note', event.detail)}></bw-field>`;
  }

  missing({ passed, failure }) {
    if (passed === '') return t('page.bench.outcomeMissing');
    return passed === 'no' && failure === '' ? t('page.bench.failureMissing') : null;
  }

  toEntry({ passed, failure, note }) {
    const { earlier } = this;
    const id = earlier?.pending ? earlier.id : this.entryId;
    return {
      id, path: `/api/outcomes/${id}`,
      body: {
        cellId: this.cellId, stage: this.part, passed: passed === 'yes', failure: passed === 'no' ? failure : null,
        note: note.trim() || null, replaces: earlier?.pending ? earlier.replaces ?? null : earlier?.id ?? null, noticedAt: new Date().toISOString(),
      },
      about: { kind: 'outcome', cellId: this.cellId, label: this.cell.label, stage: this.part },
    };
  }
}

customElements.define('bw-outcome-form', OutcomeForm);
