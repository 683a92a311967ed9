import { get } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import '../pages/day-form.js';
import { sentenceOf } from '../pages/refusal.js';
import { setUpOf } from './copy.js';

/** A new day with the set-up of the day `source`: settings, light stations and plan. Fires `copied` with the new day. */
class CopyForm extends PageElement {
  static properties = {
    source: { attribute: false }, catalogue: { attribute: false },
    stations: { state: true }, plan: { state: true }, trouble: { state: true }, made: { state: true },
  };

  connectedCallback() {
    super.connectedCallback();
    this.key = newId();
    this.#load();
  }

  render() {
    return html`<div class="flow">
      <p>${t('page.days.copyMeans')}</p>
      ${this.trouble ? this.#troubled() : nothing}
      ${this.stations && !this.made ? html`${this.#ticks()}
        <bw-day-form .key=${this.key} .like=${this.source} .catalogue=${this.catalogue} .label=${t('page.days.copySend')}
          @saved=${event => this.#copy(event)}></bw-day-form>` : nothing}
      ${this.made && !this.trouble ? html`<p role="status">${t('page.days.copying')}</p>` : nothing}
    </div>`;
  }

  #ticks() {
    const ownSpectra = this.stations.some(({ spectra }) => spectra.at(-1)?.outline.length > 0);
    return html`<div>
      ${this.stations.length ? this.#tick('stations', t('page.days.copyStations', { names: this.stations.map(({ name }) => name).join(', ') })) : nothing}
      ${this.plan ? this.#tick('plan', t('page.days.copyPlan', { cells: this.plan.teams * this.plan.cellsPerTeam })) : nothing}
      ${ownSpectra ? html`<p class="soft small">${t('page.days.copyNoSpectra')}</p>` : nothing}</div>`;
  }

  #tick(name, label) {
    return html`<label class="tick"><input type="checkbox" name=${name} checked><span>${label}</span></label>`;
  }

  #troubled() {
    return html`<bw-notice tone="unusual" .text=${this.trouble}></bw-notice>
      <button class="button" @click=${() => (this.made ? this.#finish() : this.#load())}>${t('page.days.copyAgain')}</button>`;
  }

  async #load() {
    try {
      const [stations, plan] = await Promise.all([get(`/api/labdays/${this.source.id}/stations`), get(`/api/labdays/${this.source.id}/plan`)]);
      this.trouble = null;
      this.plan = plan.settings;
      this.stations = stations;
    } catch (error) {
      this.trouble = sentenceOf(error);
    }
  }

  #copy(event) {
    event.stopPropagation();
    const wanted = name => this.querySelector(`[name="${name}"]`)?.checked;
    this.setUp = setUpOf(wanted('stations') ? this.stations : [], wanted('plan') ? this.plan : null);
    this.made = event.detail;
    this.#finish();
  }

  async #finish() {
    try {
      this.trouble = null;
      await this.setUp.into(this.made.id);
      this.dispatchEvent(new CustomEvent('copied', { detail: this.made }));
    } catch (error) {
      this.trouble = `${t('page.days.copyHalf')} ${sentenceOf(error)}`;
    }
  }
}

customElements.define('bw-day-copy', CopyForm);
