/** How a stage ended. A failure is as welcome as a success: it stays in the class's results. */
import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { advice } from './advice.js';
import { BenchForm } from './bench-form.js';
import { cautionAfter } from './caution.js';
import { back } from './cell-view.js';
import { standingOutcomes } from './progress.js';

const WHY = ['again', 'correct'];

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
    if (passed === false && !this.earlier.pending) return { why: 'again', passed: '', failure: '', note: '' };
    return { why: 'correct', passed: passed === undefined ? '' : passed ? 'yes' : 'no', failure: failure ?? '', note: note ?? '' };
  }

  fields({ why, passed, failure, note }) {
    const { stage } = this;
    const name = t(`catalogue.stage.${stage.key}`);
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.outcomeOf', { label: this.cell.label, stage: name })}</h1>
      ${cautionAfter(stage, this.cell)}
      ${this.mayBeAgain ? html`<bw-choices tall name="why" .legend=${t('page.bench.outcomeWhy')} .value=${why} @chosen=${event => this.change('why', event.detail)}
        .options=${WHY.map(key => ({ key, label: t(`page.bench.outcomeWhy.${key}`) }))}></bw-choices>` : nothing}
      <bw-choices name="passed" .legend=${t('page.bench.howDidItGo')} .value=${passed} @chosen=${event => this.change('passed', event.detail)}
        .options=${[{ key: 'yes', label: t('page.bench.worked') }, { key: 'no', label: t('page.bench.failed') }]}></bw-choices>
      ${passed === 'no' ? html`<bw-choices tall name="failure" .legend=${t('page.bench.whatFailed')} .value=${failure}
        @chosen=${event => this.change('failure', event.detail)}
        .options=${stage.failures.map(key => ({ key, label: t(`catalogue.failure.${key}`) }))}></bw-choices>
        <div role="status">${failure ? advice(failure) : nothing}</div>
        <p class="soft">${t('page.bench.failureCounts')}</p>` : nothing}
      <bw-field name="note" maxlength="200" .label=${t(isOther({ passed, failure }) ? 'page.bench.noteOther' : 'page.bench.note')} .hint=${t('page.bench.noteHint')} .value=${note}
        @typed=${event => this.change('note', event.detail)}></bw-field>`;
  }

  missing({ passed, failure, note }) {
    if (passed === '') return t('page.bench.outcomeMissing');
    if (passed === 'no' && failure === '') return t('page.bench.failureMissing');
    return isOther({ passed, failure }) && !note.trim() ? t('page.bench.noteOtherMissing') : null;
  }

  /** A stage done twice keeps both outcomes and stands as it ended last; a correction takes the other one's place. */
  get mayBeAgain() {
    return Boolean(this.earlier) && !this.earlier.pending && !this.entry;
  }

  toEntry({ why, passed, failure, note }) {
    const { earlier } = this;
    const id = earlier?.pending ? earlier.id : this.entryId;
    const replaced = earlier?.pending ? earlier.replaces : why === 'again' ? null : earlier?.id;
    return {
      id, path: `/api/outcomes/${id}`,
      body: {
        cellId: this.cellId, stage: this.part, passed: passed === 'yes', failure: passed === 'no' ? failure : null,
        note: note.trim() || null, replaces: replaced ?? null, noticedAt: serverClock.stamp(),
      },
      about: { kind: 'outcome', cellId: this.cellId, label: this.cell.label, stage: this.part },
    };
  }
}

/** A failure that no list names: only words tell it. */
const isOther = ({ passed, failure }) => passed === 'no' && failure === 'other';

customElements.define('bw-outcome-form', OutcomeForm);
