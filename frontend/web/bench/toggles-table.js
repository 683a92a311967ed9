/** The numbers of light toggles with their echoes: a line for each covering and opening. */
import { t } from '../core/texts.js';
import { symbolOf, typedAmount, unitOf } from '../entry/wording.js';
import { PageElement, html, live, nothing, uniqueId } from '../kit/kit.js';
import { UNITS, worst } from './toggles.js';

const STATES = ['covered', 'open'];

/** `toggles` as in toggles.js, `complaints` {pair: sentence} of the server. Fires `changed` with {key, value} of the draft. */
class TogglesTable extends PageElement {
  static properties = { toggles: { attribute: false }, complaints: { attribute: false } };

  constructor() {
    super();
    this.tableId = uniqueId('toggles');
  }

  render() {
    const { unit, pairs } = this.toggles;
    return html`<bw-choices .legend=${t('page.bench.togglesUnit')} .value=${unit} @chosen=${event => this.#change('unit', event.detail)}
        .options=${UNITS.map(key => ({ key, label: this.#symbol(key) }))}></bw-choices>
      <div class="toggles">
        <div class="toggles-row heads" aria-hidden="true"><span></span>${STATES.map(state => html`<span>${t(`page.bench.toggle.${state}`)}, ${this.#symbol(unit)}</span>`)}</div>
        ${pairs.map(pair => html`<div class="toggles-row" role="group" aria-label=${t('page.bench.togglesTime', { time: pair + 1 })}>
          <span aria-hidden="true">${pair + 1}</span>${STATES.map((state, i) => this.#input(state, 2 * pair + i))}
          <p class="small" id="${this.tableId}-${pair}">${this.#echo(pair)}</p></div>`)}
      </div>`;
  }

  /** Moves to the first number of a pair. */
  focusRow(pair) {
    this.querySelector(`[name="toggle-${2 * pair}"]`)?.focus();
  }

  #input(state, at) {
    const { tone } = this.toggles.verdict(at);
    const pair = this.toggles.rowOfSent(at);
    return html`<span class="field"><input type="text" inputmode="text" autocomplete="off" autocorrect="off" spellcheck="false" enterkeyhint="next"
      name="toggle-${at}" aria-label=${t('page.bench.toggleNumber', { state: t(`page.bench.toggle.${state}`), unit: this.#symbol(this.toggles.unit) })}
      aria-describedby="${this.tableId}-${pair}" aria-invalid=${worst([tone]) === 'impossible' || this.complaints?.[pair] ? 'true' : nothing}
      .value=${live(this.toggles.texts[at])} @input=${event => this.#set(at, event.target.value)}></span>`;
  }

  #echo(pair) {
    if (this.complaints?.[pair]) return line('impossible', this.complaints[pair]);
    const verdicts = this.toggles.verdictsOf(pair);
    if (verdicts.length === 0) return nothing;
    const words = verdicts.map(({ amount }) => (amount ? typedAmount(amount, this.toggles.units) : '?')).join(' → ');
    const tone = worst(verdicts.map(verdict => verdict.tone));
    return line(tone, tone === 'impossible' ? t('page.bench.rowWrong', { read: words }) : words);
  }

  #set(at, text) {
    this.complaints = null;
    this.#change('texts', this.toggles.withText(at, text));
  }

  #change = (key, value) => this.dispatchEvent(new CustomEvent('changed', { detail: { key, value } }));

  #symbol = key => symbolOf(unitOf(key, this.toggles.units));
}

const line = (tone, words) => html`<span class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${words}</span></span>`;

customElements.define('bw-toggles-table', TogglesTable);
