/** The fields of a recipe, straight from the catalogue. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { levelName, parameterName } from './recipe-list.js';
import '../entry/area.js';
import '../entry/entry.js';

const FEW = 5;

/** What is known before the bake, and what the class compares first. */
export const FIRST = ['oxideSource', 'dyeSource'];
export const MAIN = [...FIRST, 'bakeTemperature', 'bakeTime'];

/**
 * The fields of some parameters, in the order named.
 *
 * @param catalogue with, for each sort, the levels that the team has used before first
 * @param draft {parameterKey: value}
 * @param change called with key and value
 */
export const recipeFields = (keys, catalogue, draft, change) =>
  keys.map(key => recipeField(catalogue.parameters.find(each => each.key === key), catalogue, draft, change));

/** All others, folded by stage. */
export function foldedFields(shown, catalogue, draft, change) {
  const rest = catalogue.parameters.filter(each => !shown.includes(each.key));
  return html`<div>${catalogue.stages.map(stage => folded(stage, rest.filter(each => each.stage === stage.key), catalogue, draft, change))}</div>`;
}

/** The catalogue with the levels first that these cells were made with. */
export function usedFirst(catalogue, cells) {
  const used = (key, level) => cells.some(({ recipe }) => recipe.some(({ parameter, text }) => parameter === key && text === level));
  return { ...catalogue, parameters: catalogue.parameters.map(parameter => ({ ...parameter, levels: [...parameter.levels].sort((a, b) => used(parameter.key, b) - used(parameter.key, a)) })) };
}

function folded(stage, parameters, catalogue, draft, change) {
  if (parameters.length === 0) return nothing;
  return html`<details class="fold"><summary>${t('page.bench.moreAbout', { stage: t(`catalogue.stage.${stage.key}`) })}</summary>
    <div class="flow">${parameters.map(parameter => recipeField(parameter, catalogue, draft, change))}</div></details>`;
}

function recipeField(parameter, catalogue, draft, change) {
  const { key } = parameter;
  return parameter.kind === 'sort'
    ? html`${sortField(parameter, draft[key]?.text ?? '', level => change(key, { ...draft[key], text: level, unit: null }))}
      ${parameter.openLevels.includes(draft[key]?.text) ? html`<bw-field class="other" .name=${`${key}-words`} maxlength="60" .label=${t('page.bench.otherWhat', { name: parameterName(key) })} .value=${draft[key].words ?? ''}
        @typed=${event => change(key, { ...draft[key], words: event.detail })}></bw-field>` : nothing}`
    : html`<bw-entry optional .name=${key} .label=${parameterName(key)} .units=${catalogue.units}
        .field=${catalogue.fields.find(field => field.key === parameter.field)} .value=${draft[key] ?? {}}
        @entered=${event => change(key, event.detail)}></bw-entry>`;
}

/** A few levels stand in a row for a thumb; more of them go into a list. */
function sortField(parameter, value, choose) {
  const [name, options] = [parameterName(parameter.key), levels(parameter)];
  return options.length <= FEW
    ? html`<bw-choices .name=${parameter.key} .legend=${name} .value=${value} .options=${options} @chosen=${event => choose(event.detail)}></bw-choices>`
    : html`<bw-picker .name=${parameter.key} .label=${name} .value=${value} .options=${options} .none=${t('page.bench.notChosen')}
        @chosen=${event => choose(event.detail)}></bw-picker>`;
}

const levels = ({ key, levels: keys }) => keys.map(level => ({ key: level, label: levelName(key, level) }));

/** The draft as build values that travel; what was left empty stays out. */
export function buildValues(catalogue, draft) {
  return catalogue.parameters.filter(({ key }) => (draft[key]?.text ?? '').trim() !== '')
    .map(({ key, kind, field, openLevels }) => ({
      parameter: key,
      text: draft[key].text,
      words: openLevels.includes(draft[key].text) ? draft[key].words?.trim() || null : null,
      unit: kind === 'sort' ? null : draft[key].unit ?? catalogue.fields.find(each => each.key === field).units[0],
    }));
}

