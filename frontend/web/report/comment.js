import { clock } from '../core/format.js';
import { Refused, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, live, nothing, uniqueId } from '../kit/kit.js';

/** The teacher's words to a team, written on the screen and printed on its page. Fires `saved` with the server's answer. */
class TeamComment extends PageElement {
  static properties = { team: { attribute: false }, comment: { attribute: false }, typed: { state: true }, told: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    this.fieldId = uniqueId('comment');
  }

  render() {
    const words = this.typed ?? this.comment?.words ?? '';
    return html`<section class="flow comment"><h3><label for=${this.fieldId}>${t('page.report.comment')}</label></h3>
      <p class="print-only">${words}</p>
      <div class="field no-print"><p class="hint" id="${this.fieldId}-hint">${t('page.report.commentHint')}</p>
        <textarea id=${this.fieldId} rows="3" maxlength="800" aria-describedby="${this.fieldId}-hint" .value=${live(words)} @input=${this.#type}></textarea></div>
      <div class="beside no-print"><button class="button quiet" aria-label=${t('page.report.commentSaveOf', { team: this.team.name })} @click=${this.#save}>${t('page.report.commentSave')}</button>
        <span role="status" class="soft small">${this.told ?? nothing}</span></div>
      <div role="alert" class="no-print">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div></section>`;
  }

  #type({ target }) {
    this.typed = target.value;
    this.told = t('page.report.commentUnsaved');
    this.request = null;
  }

  /** Pressed again after silence, it is the same comment. */
  async #save() {
    this.request ??= { id: newId(), words: (this.typed ?? this.comment?.words ?? '').replace(/\s+/g, ' ') };
    try {
      const saved = await put(`/api/team-comments/${this.request.id}`, { teamId: this.team.teamId, words: this.request.words });
      Object.assign(this, { comment: saved, typed: null, trouble: null, told: t('page.report.commentSaved', { time: clock(saved.at) }) });
      this.dispatchEvent(new CustomEvent('saved', { detail: saved }));
    } catch (error) {
      this.trouble = error instanceof Refused ? error.detail : t('page.form.noAnswer');
    }
  }
}

customElements.define('bw-team-comment', TeamComment);
