import { day as dateWords } from '../core/format.js';
import { Refused, upload } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/**
 * Takes a day in from an archive: the file is sent and checked, then its content is shown, and only then it may come in.
 * Fires `brought` with the server's answer.
 */
class BringIn extends PageElement {
  static properties = {
    file: { state: true }, sent: { state: true }, found: { state: true }, taking: { state: true }, trouble: { state: true },
  };

  render() {
    return html`<div class="flow">
      <p>${t('page.days.bringMeans')}</p>
      <div class="field file"><label for="archive">${t('page.days.bringFile')}</label>
        <input id="archive" type="file" accept=".zip,application/zip" ?disabled=${this.#busy} @change=${this.#choose}></div>
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      <div role="status">${this.#busy ? this.#progress() : nothing}</div>
      ${this.found && !this.#busy ? this.#content() : nothing}
    </div>`;
  }

  get #busy() {
    return this.sent != null;
  }

  #progress() {
    const arrived = this.sent >= 1;
    const words = arrived ? t(this.taking ? 'page.days.bringTaking' : 'page.days.bringChecking') : t('page.days.bringSending');
    return html`<label class="progress">${words} <progress max="1" value=${arrived ? nothing : this.sent}></progress></label>`;
  }

  #content() {
    const { title, heldOn, madeAt, teams, cells, readings, changesSince, sameResults } = this.found;
    const lines = {
      date: dateWords(heldOn), teams, cells, readings, written: dateWords(madeAt.slice(0, 10)),
      version: changesSince === 0 ? t('page.days.bringSameVersion') : t('page.days.bringOlder', { changes: changesSince }),
    };
    return html`<section class="found flow" aria-labelledby="found-title"><h3 id="found-title" tabindex="-1">${title}</h3>
      <dl>${Object.entries(lines).map(([key, value]) => html`<div><dt>${t(`page.days.bring.${key}`)}</dt><dd>${value}</dd></div>`)}</dl>
      <bw-notice tone=${sameResults ? 'fine' : 'unusual'} .text=${t(sameResults ? 'page.days.bringSame' : 'page.days.bringDiffers')}></bw-notice>
      <button class="button whole" @click=${this.#take}>${t('page.days.bringSend')}</button></section>`;
  }

  #choose({ target }) {
    [this.file] = target.files;
    if (this.file) this.#send(true);
  }

  #take() {
    this.#send(false);
  }

  async #send(check) {
    Object.assign(this, { taking: !check, trouble: null, sent: 0 });
    try {
      const answer = await upload(`/api/archives?check=${check}`, this.file, part => { this.sent = part; });
      this.found = answer;
      if (!check) this.dispatchEvent(new CustomEvent('brought', { detail: answer }));
    } catch (error) {
      this.found = null;
      this.trouble = error instanceof Refused ? error.detail : t('page.days.bringNoAnswer');
    } finally {
      this.sent = null;
    }
    await this.updateComplete;
    this.querySelector('#found-title')?.focus();
  }
}

customElements.define('bw-bring-in', BringIn);
