/** Puts a cell on a heater for a team, or corrects where and since when it is there. */
import { serverClock } from '../core/clock.js';
import { Refused, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { standingOf } from '../safety/standing.js';
import { safetyWatch } from '../safety/watch.js';

const DAY_MS = 24 * 60 * 60_000;

/** `desk` as the Desk loads it, `slot` the stay to correct or null. Fires `done` after it was saved, and `left`. */
class HeaterEntry extends PageElement {
  static properties = { desk: { attribute: false }, slot: { attribute: false }, cellId: { state: true } };

  #freshId = newId();

  willUpdate(changed) {
    if (changed.has('slot')) this.#freshId = newId();
  }

  render() {
    const { slot } = this;
    const like = slot ?? this.desk.lesson.slots.at(-1);
    return html`<bw-form class="heater-form" .label=${t(slot ? 'page.lesson.correctSend' : 'page.lesson.putInSend')} .send=${this.#send} .fields=${html`
      ${slot ? nothing : this.#cells()}
      <bw-field name="heater" maxlength="24" .label=${t('page.lesson.heaterName')} .hint=${t('page.lesson.heaterNameHint')} .value=${like?.heater ?? ''}></bw-field>
      <bw-field name="position" maxlength="2" .label=${t('page.lesson.position')} .hint=${t('page.lesson.positionHint')} .value=${slot ? String(slot.position) : ''}></bw-field>
      <bw-field name="target" maxlength="12" .label=${t('page.lesson.target')} .value=${like?.target.text ?? ''}></bw-field>
      <bw-field name="holdMinutes" maxlength="3" .label=${t('page.lesson.hold')} .hint=${t('page.lesson.holdHint')} .value=${like ? String(like.holdMinutes) : ''}></bw-field>
      <bw-field name="inAt" kind="time" .label=${t('page.lesson.onSince')} .hint=${t(slot ? 'page.lesson.onSinceHint' : 'page.lesson.onSinceNow')} .value=${slot ? timeOfDay(slot.inAt) : ''}></bw-field>
      ${this.#needsReason() ? html`<bw-field name="note" maxlength="200" .label=${t('page.lesson.whyUnsigned')} .hint=${t('page.lesson.whyUnsignedHint')}></bw-field>` : nothing}`}></bw-form>
      ${slot ? html`<button class="button plain" @click=${() => this.dispatchEvent(new Event('left'))}>${t('page.lesson.leaveSlot')}</button>` : nothing}`;
  }

  focus() {
    this.querySelector('select, input')?.focus();
  }

  #cells() {
    const on = new Set(this.desk.lesson.slots.filter(({ outAt }) => !outAt).map(({ cellId }) => cellId));
    const cells = this.desk.cells.filter(({ id }) => !on.has(id)).map(({ id, label }) => ({ key: id, label }));
    return html`<bw-picker .label=${t('page.lesson.whichCell')} .options=${cells} .none=${t('page.lesson.chooseCell')} .value=${this.cellId ?? ''}
      @chosen=${event => { this.cellId = event.detail; }}></bw-picker>`;
  }

  /** Only where a cell is put on whose team is not signed off for the heat. */
  #needsReason() {
    const cell = this.slot ? null : this.desk.cells.find(({ id }) => id === this.cellId);
    return cell && standingOf(safetyWatch.signOffs, cell.teamId, 'heat', safetyWatch.now()).state !== 'valid';
  }

  #send = async ({ heater, position, target, holdMinutes, inAt, note }) => {
    const { slot } = this;
    if (!slot && !this.cellId) {
      const picker = this.querySelector('bw-picker');
      picker.complaint = t('page.lesson.chooseCell');
      picker.focus();
      return;
    }
    await put(`/api/heater-slots/${this.#freshId}`, {
      cellId: slot?.cellId ?? this.cellId, heater, position: wholeOf(position, 'position'), target: { text: target, unit: 'degC' },
      holdMinutes: wholeOf(holdMinutes, 'holdMinutes'), inAt: slot && inAt === timeOfDay(slot.inAt) ? null : lastAt(inAt, serverClock.now()),
      replaces: slot?.id ?? null, note: note?.trim() || null,
    });
    this.#freshId = newId();
    this.cellId = '';
    for (const name of ['position', 'inAt']) this.querySelector(`[name="${name}"]`).value = '';
    this.dispatchEvent(new Event('done'));
  };
}

/** A whole number from 1 on as typed; refused at the field when it is none. */
export function wholeOf(typed, field) {
  if (/^\s*[1-9]\d{0,3}\s*$/.test(typed)) return Number(typed);
  throw new Refused(422, { detail: t('page.lesson.wholeNumber'), field });
}

/** The time of the day as a time field has it, "09:05". @param time ISO text */
export function timeOfDay(time) {
  const date = new Date(time);
  return [date.getHours(), date.getMinutes()].map(number => String(number).padStart(2, '0')).join(':');
}

/** When it last was this time of the day, as ISO text; null for none. @param now in ms */
export function lastAt(text, now) {
  if (!/^\d{1,2}:\d{2}$/.test(text ?? '')) return null;
  const today = new Date(now).setHours(...text.split(':').map(Number), 0, 0);
  return new Date(today > now ? today - DAY_MS : today).toISOString();
}

customElements.define('bw-heater-entry', HeaterEntry);
