import { t } from '../core/texts.js';
import { parameterName, typedWords, valueWords } from '../bench/recipe-list.js';
import { html, nothing } from '../kit/kit.js';

/** How a team's cells were built, one column for each, so that their differences stand side by side. */
export function recipes(cells, catalogue) {
  const parameters = catalogue.parameters.map(({ key }) => key).filter(key => cells.some(({ recipe }) => recipe.some(({ parameter }) => parameter === key)));
  const row = (name, words) => html`<tr><th scope="row">${name}</th>${cells.map(cell => html`<td>${words(cell) ?? '–'}</td>`)}</tr>`;
  return html`<section class="flow recipes"><h3>${t('page.report.recipes')}</h3>
    <table><thead><tr><td></td>${cells.map(({ label }) => html`<th scope="col">${label}</th>`)}</tr></thead><tbody>
      ${parameters.map(key => row(parameterName(key), ({ recipe }) => worded(recipe.find(({ parameter }) => parameter === key), catalogue)))}
      ${cells.some(({ area }) => area) ? row(t('page.entry.area'), ({ area }) => (area ? typedWords(area, catalogue.units) : null)) : nothing}</tbody></table></section>`;
}

const worded = (value, catalogue) => (value ? valueWords(value, catalogue) : null);
