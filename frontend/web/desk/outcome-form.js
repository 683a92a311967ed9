/** How a stage ended, recorded by the teacher for a team; a correction when the stage has an outcome already. */
import { serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** `cell` and its `stages` with outcomes. Fires `changed`. */
class DeskOutcome extends PageElement {
  static properties = {
    cell: { attribute: false }, stages: { attribute: false }, stage: { state: true }, passed: { state: true }, failure: { state: true }, missing: { state: true },
  };

  constructor() {
    super();
    this.key = newId();
  }

  /** A failure that no list names: only words tell it. */
  get #other() {
    return this.passed === 'no' && this.failure === 'other';
  }

  get chosen() {
    return this.stages.find(({ key }) => key === this.stage) ?? this.stages.find(({ state }) => state === 'next') ?? this.stages.at(-1);
  }

  render() {
    const { chosen } = this;
    return html`<bw-form .label=${t(chosen.outcome ? 'page.desk.outcomeCorrect' : 'page.desk.outcomeSend')} .send=${this.#send} .fields=${html`
      <bw-picker always name="stage" .label=${t('page.desk.outcomeStage')} .value=${chosen.key} @chosen=${event => { this.stage = event.detail; this.failure = null; }}
        .options=${this.stages.map(({ key }) => ({ key, label: t(`catalogue.stage.${key}`) }))}></bw-picker>
      <bw-choices name="passed" .legend=${t('page.bench.howDidItGo')} .value=${this.passed ?? ''} .complaint=${this.missing} @chosen=${event => { this.passed = event.detail; this.missing = null; }}
        .options=${[{ key: 'yes', label: t('page.bench.worked') }, { key: 'no', label: t('page.bench.failed') }]}></bw-choices>
      ${this.passed === 'no' ? html`<bw-picker name="failure" .label=${t('page.bench.whatFailed')} .none=${t('page.desk.outcomeNone')} .value=${this.failure ?? ''}
        .options=${chosen.failures.map(key => ({ key, label: t(`catalogue.failure.${key}`) }))} @chosen=${event => { this.failure = event.detail; }}></bw-picker>` : nothing}
      <bw-field name="note" maxlength="200" .label=${t(this.#other ? 'page.bench.noteOther' : 'page.bench.note')}></bw-field>`}></bw-form>`;
  }

  #send = async ({ note }) => {
    const { chosen } = this;
    if (!this.passed) {
      this.missing = t('page.bench.outcomeMissing');
      return this.querySelector('bw-choices').focus();
    }
    if (this.passed === 'no' && !this.failure) {
      this.querySelector('bw-picker[name="failure"]').complaint = t('page.bench.failureMissing');
      return;
    }
    if (this.#other && !note.trim()) {
      const field = this.querySelector('bw-field[name="note"]');
      field.complaint = t('page.bench.noteOtherMissing');
      return field.focus();
    }
    await put(`/api/outcomes/${this.key}`, {
      cellId: this.cell.id, stage: chosen.key, passed: this.passed === 'yes', failure: this.passed === 'no' ? this.failure : null,
      note: note.trim() || null, replaces: chosen.outcome?.id ?? null, noticedAt: serverClock.stamp(),
    });
    this.key = newId();
    this.passed = null;
    this.dispatchEvent(new CustomEvent('changed', { bubbles: true }));
  };
}

customElements.define('bw-desk-outcome', DeskOutcome);
