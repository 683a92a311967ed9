/** The briefing of one team or several for a zone: tick the points, say until when, sign off; or withdraw. */
import { put } from '../core/http.js';
import { clock } from '../core/format.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { minutesUntil, timeAfter } from '../safety/standing.js';
import { safetyWatch } from '../safety/watch.js';
import { keepLessonEnd, lessonEnd } from './lesson-end.js';

const LESSON_MIN = 90;

/** `asked` is {teams, zone, standing: the valid one or null}, or null while closed. Fires `closed`. */
class Briefing extends PageElement {
  static properties = { dayId: {}, asked: { attribute: false }, ticked: { state: true } };

  willUpdate(changed) {
    if (!changed.has('asked') || !this.asked) return;
    this.ticked = new Set();
    this.waiting = this.asked.teams.map(team => ({ id: newId(), teamId: team.id }));
    this.until = lessonEnd(this.dayId) ?? timeAfter(LESSON_MIN, new Date(safetyWatch.now()));
  }

  updated(changed) {
    if (changed.has('asked') && this.asked) this.querySelector('dialog').showModal();
  }

  render() {
    if (!this.asked) return nothing;
    const { zone, teams, standing } = this.asked;
    const who = teams.length === 1 ? teams[0].name : t('page.safety.teams', { count: teams.length });
    return html`<dialog class="briefing flow" aria-labelledby="briefing-title" @close=${() => this.dispatchEvent(new Event('closed'))}>
      <h2 id="briefing-title">${t(`catalogue.zone.${zone.key}`)}: ${who}</h2>
      ${standing ? this.#standing(standing) : nothing}
      <fieldset><legend>${t('page.safety.points')}</legend><div class="points">${zone.points.map(point => this.#point(zone, point))}</div>
        <button type="button" class="button plain" @click=${() => { this.ticked = new Set(zone.points); }}>${t('page.safety.tickAll')}</button></fieldset>
      ${this.#form(zone)}
      <p class="small">${t('page.bench.caution.defer')}</p>
      <button class="button plain" @click=${() => this.#close()}>${t('page.safety.notNow')}</button></dialog>`;
  }

  #standing({ id, until, reason }) {
    return html`<bw-notice tone=${reason ? 'unusual' : 'fine'} .text=${t('page.safety.holdsUntil', { time: clock(until) })}
      .more=${html`${reason ? html`<p>${t('page.safety.because', { reason })}</p>` : nothing}
        <button class="button quiet" @click=${() => this.#withdraw(id)}>${t('page.safety.withdraw')}</button>`}></bw-notice>`;
  }

  #point(zone, point) {
    return html`<label class="tick"><input type="checkbox" .checked=${this.ticked.has(point)}
      @change=${event => this.#tick(point, event.target.checked)}><span>${t(`catalogue.zonePoint.${zone.key}.${point}`)}</span></label>`;
  }

  #form(zone) {
    const open = zone.points.length - this.ticked.size;
    return html`<bw-form .label=${t(open ? 'page.safety.override' : 'page.safety.sign')} .send=${values => this.#send(values, open)} .fields=${html`
      ${open ? html`<bw-field name="reason" maxlength="200" .label=${t('page.safety.reason')}
        .hint=${t('page.safety.reasonHint', { count: open })}></bw-field>` : nothing}
      <bw-field name="minutes" kind="time" .label=${t('page.safety.until')} .hint=${t('page.safety.untilHint')} .value=${this.until}></bw-field>`}></bw-form>`;
  }

  #tick(point, on) {
    this.ticked = new Set(on ? [...this.ticked, point] : [...this.ticked].filter(each => each !== point));
  }

  async #send({ reason, minutes: until }, open) {
    const minutes = minutesUntil(until, new Date(safetyWatch.now()));
    const body = {
      zone: this.asked.zone.key, points: [...this.ticked], minutes: Number.isFinite(minutes) ? minutes : null, reason: open ? reason : null,
    };
    // Where one fails, those before it are done and only the rest is sent again.
    while (this.waiting.length) {
      const [{ id, teamId }] = this.waiting;
      await put(`/api/sign-offs/${id}`, { teamId, ...body });
      this.waiting.shift();
    }
    keepLessonEnd(this.dayId, until);
    await this.#done();
  }

  async #withdraw(id) {
    await put(`/api/sign-offs/${id}/withdrawal`);
    await this.#done();
  }

  async #done() {
    await safetyWatch.refresh();
    this.#close();
  }

  #close() {
    this.querySelector('dialog')?.close();
  }
}

customElements.define('bw-briefing', Briefing);
