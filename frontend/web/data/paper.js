import { Refused, deliver, get } from '../core/http.js';
import { textOf } from '../core/letters.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { faultTable } from './paper-faults.js';
import { templates } from './paper-templates.js';

/**
 * Brings paper records in: the tables to fill in, then the files, looked at first and written only when nothing is to be mended.
 * Fires `kept` once the entries are on the server.
 */
class Paper extends PageElement {
  static properties = {
    labDayId: {}, open: { type: Boolean },
    tables: { state: true }, found: { state: true }, busy: { state: true }, trouble: { state: true },
  };

  firstUpdated() {
    get('/api/paper').then(tables => { this.tables = tables; }, error => this.#say(error));
  }

  render() {
    return html`<div class="flow">
      <p>${t('page.data.paperLead')}</p>
      ${this.open ? nothing : html`<bw-notice tone="unusual" .text=${t('page.data.paperClosed')}></bw-notice>`}
      <h3>${t('page.data.paperFill')}</h3><p class="soft">${t('page.data.paperFillMeans')}</p>
      ${templates(this.tables ?? [])}
      <div class="field file"><label for="paper-files">${t('page.data.paperChoose')}</label><p class="hint">${t('page.data.paperChooseHint')}</p>
        <input id="paper-files" type="file" multiple accept=".csv,.tsv,.txt,text/csv,text/plain" ?disabled=${Boolean(this.busy)}
          @click=${({ target }) => { target.value = ''; }} @change=${({ target }) => this.#choose(target)}></div>
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      <div role="status">${this.busy ? html`<label class="progress">${this.busy} <progress></progress></label>` : nothing}</div>
      ${this.found && !this.busy ? this.#content() : nothing}
    </div>`;
  }

  #content() {
    const { sheets, faultCount } = this.found;
    return html`<section class="found flow" aria-label=${t('page.data.paperFound')}>
      <ul class="bare" id="paper-found" tabindex="-1">${sheets.map(({ file, table, rows, fresh, already }) => html`<li>${t(faultCount > 0 ? 'page.data.paperSheetRows' : 'page.data.paperSheet', {
        file, rows, fresh, already, table: table ? t(`page.data.paperTable.${table}`) : t('page.data.paperNoTable'),
      })}</li>`)}</ul>
      ${faultCount > 0 ? faultTable(this.found) : this.#ready()}</section>`;
  }

  #ready() {
    const fresh = this.#sum('fresh');
    if (this.found.kept) return html`<bw-notice tone="fine" .text=${t('page.data.paperDone', { fresh })}></bw-notice>`;
    if (fresh === 0) return html`<bw-notice tone="info" .text=${t('page.data.paperNothing')}></bw-notice>`;
    return html`<bw-notice tone="fine" .text=${t('page.data.paperReady', { fresh, already: this.#sum('already') })}></bw-notice>
      <button type="button" class="button whole" @click=${() => this.#send(false)}>${fresh === 1 ? t('page.data.paperSendOne') : t('page.data.paperSend', { fresh })}</button>`;
  }

  #sum = key => this.found.sheets.reduce((sum, sheet) => sum + sheet[key], 0);

  async #choose({ files }) {
    if (files.length === 0) return;
    this.files = await Promise.all([...files].map(async file => ({ name: file.name, csv: await textOf(file) })));
    await this.#send(true);
  }

  async #send(check) {
    Object.assign(this, { busy: t(check ? 'page.data.paperLooking' : 'page.data.paperTaking'), trouble: null });
    try {
      const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
      this.found = await deliver(`/api/labdays/${this.labDayId}/paper?check=${check}`, { files: this.files, zone: timeZone });
      if (this.found.kept) this.dispatchEvent(new CustomEvent('kept'));
    } catch (error) {
      this.found = null;
      this.#say(error);
    } finally {
      this.busy = null;
    }
    await this.updateComplete;
    this.querySelector('#paper-found')?.focus();
  }

  #say(error) {
    this.trouble = error instanceof Refused ? error.detail : t('page.data.paperNoAnswer');
  }
}

customElements.define('bw-paper', Paper);
