/** Light toggles as they are being typed: covered and open in turn, judged and made ready to travel. Pure over the draft and the catalogue. */
import { readNumber } from '../core/quantity.js';
import { t } from '../core/texts.js';
import { verdictOn } from '../entry/echo.js';
import { unitOf } from '../entry/wording.js';
import { textAgain } from './sweep-again.js';

export const UNITS = ['uA', 'mA', 'mV', 'V'];
const PAIRS = 3;

/** What the form of new toggles starts with. */
export const noToggles = () => ({ unit: UNITS[0], texts: Array(2 * PAIRS).fill('') });

/** The draft {unit, texts} in which recorded toggles stand as they were typed. */
export function draftOfToggles({ toggles }, units) {
  const typed = toggles.map(each => each.typed);
  const { quantity } = unitOf(typed[0].unit, units);
  const unit = UNITS.find(key => key === typed[0].unit) ?? UNITS.find(key => unitOf(key, units).quantity === quantity);
  return { unit, texts: typed.map(each => textAgain(each, unit, units)) };
}

export class Toggles {
  /**
   * @param draft {unit, texts, confirmed}
   * @param catalogue with fields and units
   */
  constructor({ unit, texts, confirmed }, { units, fields }) {
    Object.assign(this, { unit, texts, confirmed, units });
    this.quantity = unitOf(unit, units).quantity;
    this.field = fields.find(({ key }) => key === this.quantity);
  }

  /** 0, 1, 2 ... of each covering and opening. */
  get pairs() {
    return this.texts.slice(this.texts.length / 2).map((_, pair) => pair);
  }

  verdict(at) {
    return verdictOn(readNumber(this.texts[at], this.unit, [this.field.quantity], this.units), this.field, this.units);
  }

  /** What was understood of a pair, without what is still empty. */
  verdictsOf(pair) {
    return [this.verdict(2 * pair), this.verdict(2 * pair + 1)].filter(({ tone }) => tone !== 'empty');
  }

  get unusual() {
    return this.#tones.includes('unusual');
  }

  /** What keeps them from being sent, or null. */
  get trouble() {
    const tone = worst(this.#tones);
    if (tone === 'impossible') return t('page.bench.sweepWrong');
    if (this.#tones.includes('empty')) return t('page.bench.togglesShort');
    return tone === 'unusual' && !this.confirmed ? t('page.bench.sweepConfirm') : null;
  }

  /** The numbers as they travel. */
  get sent() {
    return this.texts.map(text => ({ load: null, voltage: null, current: null, [this.quantity]: { text: text.trim(), unit: this.unit } }));
  }

  /** The pair in which a sent number stands. */
  rowOfSent = at => Math.floor(at / 2);

  withText(at, text) {
    return this.texts.map((each, i) => (i === at ? text : each));
  }

  get #tones() {
    return this.texts.map((_, at) => this.verdict(at).tone);
  }
}

/** The tone to show for several. */
export function worst(tones) {
  if (tones.some(tone => ['impossible', 'ask'].includes(tone))) return 'impossible';
  return tones.includes('unusual') ? 'unusual' : 'fine';
}
