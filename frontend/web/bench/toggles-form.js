/** Light toggles: the cell covered and opened in turn, three times. What is the light's comes and goes with it. */
import { readNumber } from '../core/quantity.js';
import { t } from '../core/texts.js';
import { verdictOn } from '../entry/echo.js';
import { symbolOf, typedAmount, unitOf } from '../entry/wording.js';
import { html, live, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { back } from './cell-view.js';
import { correctsTick, latestKnown } from './correcting.js';
import { howTo } from './how-to.js';
import { likelyStation, stationPicker } from './station-picker.js';

const PAIRS = [0, 1, 2];
const STATES = ['covered', 'open'];
const UNITS = ['uA', 'mA', 'mV', 'V'];

class TogglesForm extends BenchForm {
  get draftKey() {
    return `toggles.${this.cellId}`;
  }

  get sendLabel() {
    return t('page.bench.send.toggles');
  }

  start() {
    return { unit: UNITS[0], texts: PAIRS.flatMap(() => ['', '']), stationId: likelyStation(this.data.stations), confirmed: false };
  }

  fields({ unit, stationId, confirmed, corrects }) {
    return html`${back('cell', this.cellId)}
      <h1>${t('page.bench.readingOf', { label: this.cell.label, reading: t('page.bench.reading.toggles') })}</h1>
      ${howTo('toggles')}
      ${stationPicker(this.data.stations, stationId, id => this.change('stationId', id))}
      <bw-choices .legend=${t('page.bench.togglesUnit')} .value=${unit} @chosen=${event => this.change('unit', event.detail)}
        .options=${UNITS.map(key => ({ key, label: this.#symbol(key) }))}></bw-choices>
      <div class="toggles">
        <div class="toggles-row heads" aria-hidden="true"><span></span>${STATES.map(state => html`<span>${t(`page.bench.toggle.${state}`)}, ${this.#symbol(unit)}</span>`)}</div>
        ${PAIRS.map(pair => html`<div class="toggles-row" role="group" aria-label=${t('page.bench.togglesTime', { time: pair + 1 })}>
          <span aria-hidden="true">${pair + 1}</span>${STATES.map((state, i) => this.#input(state, 2 * pair + i))}
          <p class="small" id="pair-${pair}">${this.#echo(pair)}</p></div>`)}
      </div>
      ${this.#tones.includes('unusual') ? html`<label class="tick"><input type="checkbox" .checked=${confirmed}
        @change=${event => this.change('confirmed', event.target.checked)}><span>${t('page.bench.sweepUnusual')}</span></label>` : nothing}
      ${correctsTick(latestKnown(this.data, this.cellId, 'toggles'), corrects, this.data.catalogue.units, ticked => this.change('corrects', ticked))}`;
  }

  #input(state, at) {
    const { tone } = this.#verdict(at);
    return html`<span class="field"><input type="text" inputmode="text" autocomplete="off" autocorrect="off" spellcheck="false" enterkeyhint="next"
      name="toggle-${at}" aria-label=${t('page.bench.toggleNumber', { state: t(`page.bench.toggle.${state}`), unit: this.#symbol(this.draft.unit) })}
      aria-describedby="pair-${Math.floor(at / 2)}" aria-invalid=${['impossible', 'ask'].includes(tone) ? 'true' : nothing}
      .value=${live(this.draft.texts[at])} @input=${event => this.#set(at, event.target.value)}></span>`;
  }

  #echo(pair) {
    const verdicts = [this.#verdict(2 * pair), this.#verdict(2 * pair + 1)].filter(({ tone }) => tone !== 'empty');
    if (verdicts.length === 0) return nothing;
    const tone = worst(verdicts.map(verdict => verdict.tone));
    const words = verdicts.map(({ amount }) => (amount ? typedAmount(amount, this.data.catalogue.units) : '?')).join(' → ');
    return html`<span class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${tone === 'impossible' ? t('page.bench.rowWrong', { read: words }) : words}</span></span>`;
  }

  #set(at, text) {
    this.change('texts', this.draft.texts.map((each, i) => (i === at ? text : each)));
  }

  #symbol(key) {
    return symbolOf(unitOf(key, this.data.catalogue.units));
  }

  get #quantity() {
    return unitOf(this.draft.unit, this.data.catalogue.units).quantity;
  }

  #verdict(at) {
    const { units } = this.data.catalogue;
    const field = this.data.field(this.#quantity);
    return verdictOn(readNumber(this.draft.texts[at], this.draft.unit, [field.quantity], units), field, units);
  }

  get #tones() {
    return this.draft.texts.map((_, at) => this.#verdict(at).tone);
  }

  missing({ stationId, confirmed }) {
    const tone = worst(this.#tones);
    if (!stationId) return t('page.bench.stationMissing');
    if (tone === 'impossible') return t('page.bench.sweepWrong');
    if (this.#tones.includes('empty')) return t('page.bench.togglesShort');
    return tone === 'unusual' && !confirmed ? t('page.bench.sweepConfirm') : null;
  }

  toEntry({ stationId, unit, texts, corrects }) {
    const id = this.entryId;
    const points = texts.map(text => ({ load: null, voltage: null, current: null, [this.#quantity]: { text: text.trim(), unit } }));
    return {
      id, path: `/api/readings/${id}`,
      body: {
        cellId: this.cellId, kind: 'toggles', stationId, voltage: null, current: null, points,
        unusualConfirmed: this.#tones.includes('unusual'), replaces: corrects ? latestKnown(this.data, this.cellId, 'toggles')?.id ?? null : null, noticedAt: new Date().toISOString(),
      },
      about: { kind: 'reading', cellId: this.cellId, label: this.cell.label, reading: 'toggles' },
    };
  }
}

function worst(tones) {
  if (tones.some(tone => ['impossible', 'ask'].includes(tone))) return 'impossible';
  return tones.includes('unusual') ? 'unusual' : 'fine';
}

customElements.define('bw-toggles-form', TogglesForm);
