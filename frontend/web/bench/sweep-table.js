/** The rows of a load sweep with their echoes, the way to read them, and the next resistor named. */
import { prefixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { symbolOf, typedAmount, unitOf } from '../entry/wording.js';
import { PageElement, html, live, nothing, uniqueId } from '../kit/kit.js';
import { isEnough, nearPeak, nextLoad } from './loads.js';
import { METER_UNITS, OFFERED, WAYS, pointOf } from './sweep-rows.js';

/**
 * `sweep` as in sweep.js, `complaints` {row: sentence} of the server, `guessOhm` Voc/Isc where it is known. Fires `changed`
 * with {key, value} of the draft.
 */
class SweepTable extends PageElement {
  static properties = { sweep: { attribute: false }, complaints: { attribute: false }, guessOhm: { type: Number } };

  constructor() {
    super();
    this.tableId = uniqueId('sweep');
  }

  render() {
    const { sweep } = this;
    return html`<details class="fold"><summary>${t('page.bench.sweepWayNow', { way: t(`page.bench.sweepWay.${sweep.way}`) })}</summary>
        <bw-choices tall .legend=${t('page.bench.sweepWay')} .value=${sweep.way} @chosen=${event => this.#change('way', event.detail)}
          .options=${Object.keys(WAYS).filter(key => OFFERED.includes(key) || key === sweep.way).map(key => ({ key, label: t(`page.bench.sweepWay.${key}`) }))}></bw-choices></details>
      ${sweep.columns.filter(column => METER_UNITS[column]).map(column => this.#unitChoice(column))}
      <div class="sweep columns-${sweep.columns.length}" role="group" aria-label=${t('page.bench.reading.sweep')}>
        <div class="sweep-row heads" aria-hidden="true">${sweep.columns.map(column => html`<span>${t(`page.bench.column.${column}`)}, ${this.#symbol(column)}</span>`)}</div>
        ${sweep.rows.map((row, i) => this.#row(row, i))}
      </div>
      ${this.#next()}`;
  }

  /** Moves to the meter's number in a row. */
  focusRow(i) {
    this.querySelector(`[name="${this.sweep.columns[1]}-${i}"]`)?.focus();
  }

  #unitChoice(column) {
    return html`<bw-choices .legend=${t(`page.bench.sweepUnit.${column}`)} .value=${this.sweep.unit(column)}
      @chosen=${event => this.#change(`${column}Unit`, event.detail)}
      .options=${METER_UNITS[column].map(key => ({ key, label: symbolOf(unitOf(key, this.sweep.units)) }))}></bw-choices>`;
  }

  #row(row, i) {
    const verdicts = this.sweep.read(row);
    return html`<div class="sweep-row">${this.sweep.columns.map(column => this.#input(row, i, column, verdicts))}
      <button type="button" class="button plain remove" aria-label=${t('page.bench.removeRow', { row: i + 1 })} @click=${() => this.#remove(i)}><bw-icon name="remove"></bw-icon></button>
      <p class="small" id="${this.tableId}-${i}">${this.#echo(row, i, verdicts)}</p></div>`;
  }

  #input(row, i, column, verdicts) {
    const faulty = this.sweep.tone(row, verdicts) === 'impossible' && verdicts[column].tone !== 'fine' || this.complaints?.[i];
    return html`<span class="field"><input type="text" inputmode="decimal" autocomplete="off" autocorrect="off" spellcheck="false"
      enterkeyhint="next" name="${column}-${i}" aria-label=${t('page.bench.columnInRow', { column: t(`page.bench.column.${column}`), unit: this.#symbol(column), row: i + 1 })}
      aria-describedby="${this.tableId}-${i}" .value=${live(row[column] ?? '')} aria-invalid=${faulty ? 'true' : nothing}
      @input=${event => this.#set(i, column, event.target.value)}></span>`;
  }

  #echo(row, i, verdicts) {
    if (this.complaints?.[i]) return html`<span class="echo impossible"><bw-icon name="impossible"></bw-icon><span>${this.complaints[i]}</span></span>`;
    const tone = this.sweep.tone(row, verdicts);
    if (tone === 'empty') return nothing;
    const read = Object.values(verdicts).filter(verdict => verdict.tone !== 'empty' || this.sweep.columns.length < 3);
    const words = read.map(({ amount }) => (amount ? typedAmount(amount, this.sweep.units) : '?')).join(' · ') + follows(verdicts);
    return html`<span class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${tone === 'impossible' ? t('page.bench.rowWrong', { read: words }) : words}</span></span>`;
  }

  #next() {
    const { points, way } = this.sweep;
    const next = way === 'voltageCurrent' ? null : nextLoad(points, this.guessOhm ?? null);
    return html`<div class="beside">
      ${next && !this.#isLaid(next) ? html`<button type="button" class="button quiet" @click=${() => this.#add(prefixed(next, 'Ω'))}><bw-icon name="add"></bw-icon>${t('page.bench.nextLoad', { load: prefixed(next, 'Ω') })}</button>` : nothing}
      <button type="button" class="button plain" @click=${() => this.#add('')}>${t('page.bench.addRow')}</button></div>
      <p class="soft small" role="status">${isEnough(points) ? t('page.bench.sweepEnough') : points.length ? t('page.bench.sweepSoFar', { points: points.length, near: nearPeak(points) }) : nothing}</p>`;
  }

  /** Whether a row with this resistor waits for its reading already. */
  #isLaid(ohm) {
    return this.sweep.rows.some(row => row.load === prefixed(ohm, 'Ω'));
  }

  #set(i, column, text) {
    this.complaints = { ...this.complaints, [i]: null };
    this.#change('rows', this.sweep.withNumber(i, column, text));
  }

  async #add(load) {
    const { rows, at } = this.sweep.withLoad(load);
    this.#change('rows', rows);
    await this.updateComplete;
    this.querySelector(`[name="${this.sweep.columns[load ? 1 : 0]}-${at}"]`)?.focus();
  }

  #remove(i) {
    this.complaints = null;
    this.#change('rows', this.sweep.rows.filter((_, at) => at !== i));
  }

  #change = (key, value) => this.dispatchEvent(new CustomEvent('changed', { detail: { key, value } }));

  #symbol = column => symbolOf(unitOf(this.sweep.unit(column), this.sweep.units));
}

/** What follows by Ohm's law from the two that were typed. */
function follows(verdicts) {
  const point = pointOf(verdicts);
  if (!point) return '';
  const texts = { load: [point.ohm, 'Ω'], voltage: [point.voltageV, 'V'], current: [point.currentA, 'A'] };
  const missing = Object.keys(texts).find(column => !verdicts[column]?.amount);
  return missing ? ` → ${prefixed(...texts[missing])}` : '';
}

customElements.define('bw-sweep-table', SweepTable);
