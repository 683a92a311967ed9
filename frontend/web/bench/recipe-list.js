/** A cell's recipe as it was entered. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { unitOf } from '../entry/wording.js';

export const parameterName = key => t(`catalogue.parameter.${key}`);
export const levelName = (parameter, key) => t(`catalogue.level.${parameter}.${key}`);

/** What was entered, as term and value. */
export function recipeList(cell, catalogue) {
  const rows = cell.recipe.map(value => [parameterName(value.parameter), valueWords(value, catalogue)]);
  if (cell.area) rows.push([t('page.entry.area'), typedWords(cell.area, catalogue.units)]);
  return rows.length ? html`<dl class="recipe">${rows.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>`
    : html`<p class="soft">${t('page.bench.emptyRecipe')}</p>`;
}

/** A value of a recipe as entered, a level by its name. */
export function valueWords({ parameter, text, unit, words }, { parameters, units }) {
  const known = parameters.find(each => each.key === parameter);
  if (known?.kind === 'sort') return words ? t('page.quoted', { words }) : levelName(parameter, text);
  return typedWords({ text, unit }, units);
}

/** As typed; the unit chosen beside it is missing where one stands in the text. */
export const typedWords = ({ text, unit }, units) => [text, unitOf(unit, units)?.symbols[0]].filter(Boolean).join('\u00a0');
