/** The rows of a load sweep, two columns to type in, and which two they are. */
import { symbolOf, unitOf } from '../entry/wording.js';
import { t } from '../core/texts.js';
import { html, live, nothing } from '../kit/kit.js';
import { choice } from './inputs.js';
import { columnsOf, rowTone } from './questions.js';

const PAIRS = ['load-voltage', 'load-current', 'voltage-current'];

export function sweepRows(context) {
  const { tried, catalogue, set } = context;
  const word = key => symbolOf(unitOf(key, catalogue.units));
  return html`
    ${choice('pair', PAIRS, key => t(`page.calculator.pair.${key}`), context)}
    ${tried.pair.includes('voltage') ? choice('voltageUnit', ['mV', 'V'], word, context) : nothing}
    ${tried.pair.includes('current') ? choice('currentUnit', ['uA', 'mA'], word, context) : nothing}
    <table class="rows"><caption class="unseen">${t('page.bench.reading.sweep')}</caption>
      <thead><tr>${columnsOf(tried).map(({ name, unit }) => html`<th scope="col">${t(`page.calculator.column.${name}`)}, ${word(unit)}</th>`)}
        <th><span class="unseen">${t('page.calculator.remove')}</span></th></tr></thead>
      <tbody>${tried.rows.map((row, at) => rowOf(row, at, context))}</tbody></table>
    <p class="complaint" role="alert" data-rows></p>
    <button type="button" class="button quiet" @click=${() => set({ rows: [...tried.rows, ['', '']] })}>
      <bw-icon name="add"></bw-icon>${t('page.bench.addRow')}</button>`;
}

function rowOf(row, at, { tried, catalogue, set }) {
  const tone = rowTone(row, tried, catalogue);
  const names = columnsOf(tried).map(({ name }) => t('page.calculator.cellOfRow', { column: t(`page.calculator.column.${name}`), row: at + 1 }));
  const change = (column, text) => set({ rows: tried.rows.map((each, i) => (i === at ? each.with(column, text) : each)) });
  return html`<tr data-row=${at}>${row.map((text, column) => html`<td><span class="field"><input type="text" inputmode="decimal" autocomplete="off"
      autocorrect="off" spellcheck="false" enterkeyhint="next" aria-label=${names[column]} .value=${live(text)}
      aria-invalid=${tone === 'wrong' && text.trim() !== '' ? 'true' : nothing} @input=${event => change(column, event.target.value)}></span></td>`)}
    <td><button type="button" class="button plain" aria-label=${t('page.calculator.removeRow', { row: at + 1 })}
      @click=${() => set({ rows: tried.rows.toSpliced(at, 1) })}><bw-icon name="remove"></bw-icon></button></td></tr>`;
}
