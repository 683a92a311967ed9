/** What every form of the bench shares: the draft that survives, the check before sending, the return of a refusal. */
import { draftOf, dropDraft, keepDraft } from '../core/drafts.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { checkEntries, complainAt } from '../entry/check.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { closedNotice } from './closed.js';
import { go } from './routes.js';

/**
 * A form over `data` and `outbox`. Its draft is kept under `draftKey`; a refused `entry` opens with what was typed.
 * A form says what to send by `toEntry(draft, unusual)` ({id, path, body, about}, and `also` what follows it) and what to draw by `fields(draft)`; one with fields of its own shows
 * a refusal there by `refusedAt(field, detail)`.
 */
export class BenchForm extends PageElement {
  static properties = {
    data: { attribute: false }, outbox: { attribute: false }, cellId: {}, part: {}, entry: { attribute: false },
    draft: { state: true }, trouble: { state: true },
  };

  willUpdate() {
    this.draft ??= draftOf(this.keptUnder, this.entry?.about.draft ?? { id: newId(), ...this.start() });
  }

  firstUpdated() {
    if (this.entry?.problem) this.#showRefusal(this.entry.problem);
  }

  /** Changes one part of the draft and keeps it on the phone. */
  change(key, value) {
    this.draft = { ...this.draft, [key]: value };
    keepDraft(this.keptUnder, this.draft);
  }

  start() {
    return {};
  }

  get keptUnder() {
    return this.entry ? `again.${this.entry.id}` : this.draftKey;
  }

  /** Made with the draft, so that a button pressed twice makes one entry. */
  get entryId() {
    return this.entry?.id ?? this.draft.id;
  }

  get cell() {
    return this.data.cell(this.cellId);
  }

  render() {
    return html`<form class="flow bench-form" novalidate @submit=${this.#submit}>
      ${closedNotice(this.data)}
      ${this.fields(this.draft)}
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      <button class="button whole">${this.sendLabel}</button>
    </form>`;
  }

  async #submit(event) {
    event.preventDefault();
    this.trouble = null;
    const { ready, unusual } = await checkEntries(this);
    this.trouble = ready ? this.missing?.(this.draft) ?? null : t('page.bench.lookAgain');
    if (!this.trouble) await this.#store(this.toEntry(this.draft, unusual));
  }

  async #store({ also = [], ...entry }) {
    const { about } = entry;
    try {
      for (const each of [entry, ...also]) {
        await this.outbox.add({ ...each, about: { ...each.about, teamId: this.data.teamId, draft: this.draft } });
      }
    } catch {
      this.trouble = t('page.bench.storeRefused');
      return;
    }
    dropDraft(this.keptUnder);
    this.draft = undefined;
    go('cell', about.cellId);
  }

  async #showRefusal({ detail, field }) {
    await this.updateComplete;
    if (!field || !(this.refusedAt?.(field, detail) || complainAt(this, field, detail))) this.trouble = detail;
  }
}
