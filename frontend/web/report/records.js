import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

const KEYS = ['recipe', 'area', 'stages', 'dark', 'light', 'sweep'];

/** What a team recorded of what was asked; it says nothing of how good its cells are. */
export function records({ cells, cellsAsked }) {
  const { recorded, asked } = sum(cells);
  return html`<section class="flow kept"><h3>${t('page.report.records')}</h3>
    <p>${t('page.report.recordsMeans', { cells: cells.length, cellsAsked, recorded, asked })}</p>
    <table class="records"><thead><tr><td></td>${cells.map(({ label }) => html`<th scope="col">${label}</th>`)}</tr></thead>
      <tbody>${KEYS.map(key => html`<tr><th scope="row">${t(`page.report.record.${key}`)}</th>${cells.map(cell => html`<td>${mark(cell.records.find(each => each.key === key))}</td>`)}</tr>`)}</tbody></table></section>`;
}

/** All records of some cells together. */
export function sum(cells) {
  const all = cells.flatMap(({ records: each }) => each);
  const total = name => all.reduce((count, each) => count + each[name], 0);
  return { recorded: total('recorded'), asked: total('asked') };
}

function mark(record) {
  if (!record) return html`<span aria-hidden="true">–</span><span class="unseen">${t('page.report.notAsked')}</span>`;
  const { recorded, asked } = record;
  if (asked > 1) return t('page.report.of', { recorded, asked });
  return recorded ? html`<bw-icon name="fine" .label=${t('page.report.there')}></bw-icon>` : html`<strong>${t('page.report.missing')}</strong>`;
}
