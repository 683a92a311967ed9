/** Puts a cell on a heater's position, or corrects where it is, from the team's phone. */
import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { BenchForm } from '../bench/bench-form.js';
import { caution } from '../bench/caution.js';
import { back } from '../bench/cell-view.js';
import { html } from '../kit/kit.js';

const NOT_SIGNED_OFF = 'zone.notSignedOff';

class HeaterForm extends BenchForm {
  get draftKey() {
    return `heater.${this.cellId}.${this.earlier?.id ?? ''}`;
  }

  get sendLabel() {
    return t(this.earlier ? 'page.lesson.correctSend' : 'page.lesson.putInSend');
  }

  /** The stay that is corrected: a cell is on one heater at a time. */
  get earlier() {
    return this.data.slots.find(slot => slot.cellId === this.cellId && !slot.outAt) ?? null;
  }

  start() {
    const { earlier } = this;
    if (earlier) return { heater: earlier.heater, position: String(earlier.position), target: earlier.target, hold: String(earlier.holdMinutes) };
    const last = this.data.slots.at(-1);
    return { heater: last?.heater ?? '', position: '', target: { text: planned(this.cell, 'bakeTemperature'), unit: 'degC' }, hold: planned(this.cell, 'bakeTime') };
  }

  fields({ heater, position, target, hold }) {
    const typed = key => event => this.change(key, event.detail);
    return html`${back('cell', this.cellId)}
      <h1>${t(this.earlier ? 'page.lesson.correctCell' : 'page.lesson.putInCell', { label: this.cell.label })}</h1>
      ${caution({ key: 'bake', hot: true }, this.cell)}
      <bw-field name="heater" maxlength="24" .label=${t('page.lesson.heaterName')} .hint=${t('page.lesson.heaterNameHint')} .value=${heater} @typed=${typed('heater')}></bw-field>
      <bw-field name="position" maxlength="2" .label=${t('page.lesson.position')} .hint=${t('page.lesson.positionHint')} .value=${position} @typed=${typed('position')}></bw-field>
      <bw-entry name="target" .label=${t('page.lesson.target')} .field=${this.data.field('heaterTarget')} .units=${this.data.catalogue.units}
        .value=${target} @entered=${typed('target')}></bw-entry>
      <bw-field name="holdMinutes" maxlength="3" .label=${t('page.lesson.hold')} .hint=${t('page.lesson.holdHint')} .value=${hold} @typed=${typed('hold')}></bw-field>`;
  }

  missing({ heater, position, hold }) {
    if (!heater.trim()) return t('page.lesson.heaterMissing');
    return [position, hold].every(text => /^\s*[1-9]\d{0,2}\s*$/.test(text)) ? null : t('page.lesson.wholeNumbers');
  }

  /** An entry that still waits here is changed; what the server has is corrected by another one. */
  toEntry({ heater, position, hold }) {
    const { earlier } = this;
    const waiting = earlier?.pending ? this.outbox.entries.find(each => each.id === earlier.id)?.body : null;
    const id = waiting ? earlier.id : this.entryId;
    return {
      id, path: `/api/heater-slots/${id}`,
      body: {
        cellId: this.cellId, heater, position: Number(position), target: this.querySelector('bw-entry').typed,
        holdMinutes: Number(hold), inAt: waiting ? waiting.inAt : this.#inAt, replaces: waiting ? waiting.replaces : earlier?.id ?? null, note: null,
      },
      about: { kind: 'heater', cellId: this.cellId, label: this.cell.label },
    };
  }

  /** A refused entry keeps its time, except where the team was not signed off: then the cell waited for that. */
  get #inAt() {
    if (this.entry && this.entry.problem?.code !== NOT_SIGNED_OFF) return this.entry.body.inAt;
    return this.earlier ? null : serverClock.stamp();
  }
}

/** What the recipe says, as a whole number; empty when it says nothing. */
function planned(cell, parameter) {
  const number = cell?.recipe?.find(each => each.parameter === parameter)?.number;
  return number > 0 ? String(Math.round(number)) : '';
}

customElements.define('bw-heater-form', HeaterForm);
