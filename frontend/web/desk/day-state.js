/** Where the day stands: open for entries, closed for teams, or final; and the steps between. */
import { put } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { sentenceOf } from '../pages/refusal.js';

const stateOf = day => (day.resultsFinal ? 'final' : day.entryOpen ? 'open' : 'closed');
const TONES = { open: 'fine', closed: 'unusual', final: '' };

export const stateTag = day => html`<span class="tag ${TONES[stateOf(day)]}">${t(`page.desk.day.${stateOf(day)}`)}</span>`;

/** `day` as the server answers it. Fires `changed`. Final results are taken back with a reason only. */
class DayState extends PageElement {
  static properties = { day: { attribute: false }, trouble: { state: true } };

  render() {
    const state = stateOf(this.day);
    return html`<section class="flow"><h2>${t('page.desk.dayState')}</h2>
      <ol class="bare states">${['open', 'closed', 'final'].map(each => html`<li class=${each === state ? 'here' : nothing}
        aria-current=${each === state ? 'step' : nothing}><strong>${t(`page.desk.day.${each}`)}</strong>
        <p class="small">${t(`page.desk.dayMeans.${each}`)}</p></li>`)}</ol>
      ${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}
      ${state === 'final' ? this.#takeBack() : html`<div class="beside">${state === 'open'
        ? html`<button class="button quiet" @click=${() => this.#entry(false)}>${t('page.desk.close')}</button>`
        : html`<button class="button quiet" @click=${() => this.#entry(true)}>${t('page.desk.open')}</button>`}
        <button class="button quiet" @click=${() => this.#final()}>${t('page.desk.makeFinal')}</button></div>`}
    </section>`;
  }

  #takeBack() {
    return html`<div class="narrow"><bw-form .label=${t('page.desk.takeBack')} .send=${values => this.#write('final', { resultsFinal: false, reason: values.reason })}
      .fields=${html`<bw-field name="reason" maxlength="120" .label=${t('page.desk.takeBackWhy')} .hint=${t('page.desk.takeBackHint')}></bw-field>`}></bw-form></div>`;
  }

  #entry(open) {
    return this.#try(() => this.#write('entry', { open }));
  }

  #final() {
    return this.#try(() => this.#write('final', { resultsFinal: true, reason: null }));
  }

  async #try(work) {
    try {
      this.trouble = null;
      await work();
    } catch (error) {
      this.trouble = sentenceOf(error);
    }
  }

  async #write(what, body) {
    await put(`/api/labdays/${this.day.id}/${what}`, body);
    this.dispatchEvent(new CustomEvent('changed'));
  }
}

customElements.define('bw-day-state', DayState);
