/** Who needs the teacher next: the server's list, one line per thing, each with its one next step. */
import { put } from '../core/http.js';
import { clock, dateHere, dayInYear } from '../core/format.js';
import { remark, t } from '../core/texts.js';
import { PageElement, html, nothing, repeat } from '../kit/kit.js';
import { step } from './keys.js';
import { settle } from './still.js';

const ICONS = { 1: 'impossible', 2: 'waiting', 3: 'unusual', 4: 'phone' };
const TONES = { 1: 'impossible', 2: 'impossible', 3: 'unusual', 4: '' };
const LATER_MIN = 10;
const MINUTE_MS = 60_000;
const LONG_MIN = 120;
const DAY_MIN = 12 * 60;

/**
 * `desk` as the Desk loads it; `act(item)` does the next step of an item. Fires `putoff` with the server's answer. Stands
 * still while a pointer or the focus is in it.
 */
class Attention extends PageElement {
  static properties = { desk: { attribute: false }, act: { attribute: false }, held: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    this.items = [];
  }

  connectedCallback() {
    super.connectedCallback();
    for (const kind of ['pointerenter', 'pointerleave', 'focusin', 'focusout', 'keydown']) this.addEventListener(kind, this);
  }

  handleEvent(event) {
    if (event.type === 'keydown') return this.#move(event);
    this.pointed = event.type === 'pointerenter' && event.pointerType === 'mouse' || this.pointed && event.type !== 'pointerleave';
    this.focused = event.type === 'focusin' || this.focused && !(event.type === 'focusout' && !this.contains(event.relatedTarget));
    this.held = this.pointed || this.focused;
  }

  willUpdate() {
    const newest = this.desk.attention.items;
    const { items, waiting } = settle(this.items, newest, this.held && this.items.length > 0);
    this.items = items;
    this.waiting = waiting;
  }

  render() {
    const now = this.items.filter(item => !item.putOffUntil);
    const later = this.items.filter(item => item.putOffUntil);
    return html`<section aria-labelledby="attention-title">
      <div class="apart"><h2 id="attention-title">${t('page.desk.attention')}</h2>
        <span class="count" role="status">${this.#count(now)}</span></div>
      ${this.trouble ? html`<bw-notice tone="unusual" .text=${this.trouble}></bw-notice>` : nothing}
      ${now.length === 0 ? this.#nobody() : html`<ol class="bare waiting-list">${repeat(now, item => item.id, item => this.#line(item))}</ol>`}
      ${later.length ? html`<details class="fold"><summary>${t('page.desk.putOff', { count: later.length })}</summary>
        <ol class="bare waiting-list">${repeat(later, item => item.id, item => this.#line(item))}</ol></details>` : nothing}
    </section>`;
  }

  #count(now) {
    if (this.waiting) return t('page.desk.newWait', { count: this.waiting });
    return now.length ? t('page.desk.waitCount', { count: now.filter(item => !item.gone).length }) : '';
  }

  #nobody() {
    const { day, teams } = this.desk;
    const key = day.resultsFinal ? 'final' : teams.length === 0 ? 'noTeam' : day.entryOpen ? 'open' : 'closed';
    return html`<p class="nobody"><bw-icon name="fine"></bw-icon><span>${t(`page.desk.nobody.${key}`)}</span></p>`;
  }

  #line(item) {
    const team = this.desk.teams.find(({ id }) => id === item.teamId);
    return html`<li class="matter u${item.urgency} ${item.gone ? 'gone' : ''}" data-item=${item.id}>
      <p class="what"><span class="tag ${TONES[item.urgency]}"><bw-icon name=${ICONS[item.urgency]}></bw-icon>${t(`page.desk.urgency.${item.urgency}`)}</span>
        ${team ? html`<span class="who"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</span>` : nothing}
        <span class="soft age">${this.#age(item)}</span></p>
      <p><strong>${t(`page.desk.attention.${item.key}`, item.values)}</strong></p>
      ${item.remark ? html`<p class="why soft small">${remark(item.remark)}</p>` : html`<p class="why soft small">${t(`page.desk.why.${item.key}`, item.values)}</p>`}
      ${item.gone ? html`<p class="small"><bw-icon name="fine"></bw-icon> ${t('page.desk.gone')}</p>` : this.#buttons(item, team)}
    </li>`;
  }

  #buttons(item, team) {
    const about = `${t(`page.desk.attention.${item.key}`, item.values)}${team ? `, ${team.name}` : ''}`;
    return html`<div class="steps">
      <button class="button quiet next" aria-label="${t(`page.desk.action.${item.action}`)}: ${about}" @click=${() => this.act(item)}>${t(`page.desk.action.${item.action}`)}</button>
      ${item.putOffUntil
        ? html`<button class="button plain" aria-label="${t('page.desk.bringBack')}: ${about}" @click=${() => this.#putOff(item, 0)}>${t('page.desk.bringBack')}</button>`
        : html`<button class="button plain" aria-label="${t('page.desk.seen')}: ${about}" @click=${() => this.#putOff(item, LATER_MIN)}>${t('page.desk.seen')}</button>`}
    </div>`;
  }

  #age({ since, putOffUntil }) {
    if (putOffUntil) return t('page.desk.backAt', { time: clock(putOffUntil) });
    const minutes = Math.floor((Date.parse(this.desk.attention.serverTime) - Date.parse(since)) / MINUTE_MS);
    if (minutes < 1) return t('page.desk.justNow');
    if (minutes < LONG_MIN) return t('page.desk.minutesAgo', { minutes });
    return t('page.desk.sinceTime', { time: minutes < DAY_MIN ? clock(since) : dayInYear(dateHere(since)) });
  }

  /** Arrow keys move from one line's next step to another's. */
  #move(event) {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (!by) return;
    event.preventDefault();
    this.step(by);
  }

  step(by) {
    step([...this.querySelectorAll('.matter .next')], by);
  }

  async #putOff(item, minutes) {
    try {
      const detail = await put(`/api/labdays/${this.desk.day.id}/desk/put-off`, { item: item.id, minutes });
      this.trouble = null;
      this.dispatchEvent(new CustomEvent('putoff', { detail }));
      this.#keepFocus(item);
    } catch {
      this.trouble = t('page.desk.notSaved');
    }
  }

  /** The line that was put off left the list; the focus goes to what took its place. */
  async #keepFocus(item) {
    await this.updateComplete;
    const lines = [...this.querySelectorAll('section > .waiting-list .next')];
    if (this.contains(document.activeElement) && document.activeElement.closest('.matter')?.dataset.item !== item.id) return;
    (lines[0] ?? this.querySelector('summary'))?.focus();
  }
}

customElements.define('bw-attention', Attention);
