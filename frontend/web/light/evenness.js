import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import './grid-form.js';
import { typedParts } from './typed.js';

/** How even a station's light is: the latest grid with what it means, and a place to read another. */
export function evenness(station, page) {
  const grid = station.grids.at(-1);
  if (!grid && !page.mayRead) return nothing;
  return html`<details class="fold"><summary>${grid ? t('page.light.even.read', { percent: percentOf(grid) }) : t('page.light.even.unread')}</summary>
    <div class="flow">
      ${grid ? picture(grid, page.catalogue) : html`<p>${t('page.light.even.why')}</p>`}
      ${page.mayRead ? html`<bw-grid-form .station=${station} .catalogue=${page.catalogue} @saved=${page.load}></bw-grid-form>` : nothing}
    </div></details>`;
}

const percentOf = ({ nonUniformity }) => Number((100 * nonUniformity).toPrecision(2));

function picture(grid, { units }) {
  const rows = Array.from({ length: Math.ceil(grid.readings.length / grid.columns) }, (_, row) =>
    grid.readings.slice(row * grid.columns, (row + 1) * grid.columns));
  const { unit } = typedParts(grid.readings[0], units);
  return html`<p>${t(`page.light.even.grade.${grid.grade === 'A+' ? 'Aplus' : grid.grade}`)}</p>
    <table class="grid"><caption class="small soft">${t('page.light.even.caption', { unit, time: clock(grid.acceptedAt) })}</caption>
      <tbody>${rows.map(row => html`<tr>${row.map(typed => html`<td class="number">${typedParts(typed, units).number}</td>`)}</tr>`)}</tbody></table>`;
}
