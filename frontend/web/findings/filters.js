import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const MOST_NAMED = 12;

/**
 * Which cells are looked at: always in sight what is left out and why, and folded away the choices. `only` is a map from what is
 * filtered by to a set of values; `set(facet, value, wanted)` changes it, without a value all of it, without a facet everything. `compared` says what the cells looked
 * at are.
 */
export function filters({ findings, only, facet, words, set, open, compared }) {
  const { all, looked, leftOut, choices } = findings;
  return html`<section class="filters flow" aria-label=${t('page.findings.filter')}>
    <p class="looked" role="status">${only.size === 0 ? t('page.findings.lookedAll', { all })
      : html`<strong>${t('page.findings.lookedSome', { looked, all })}</strong> ${named(leftOut, all - looked)}`}</p>
    <p class="soft">${compared}</p>
    ${only.size === 0 ? nothing : html`<ul class="bare chips">${[...only].map(([key, values]) => html`<li class="chip">
        <span><strong>${facetName(key, words)}:</strong> ${[...values].map(value => valueName(key, value, choices, words)).join(', ')}</span>
        <button type="button" class="drop" aria-label=${t('page.findings.filterDrop', { name: facetName(key, words) })} @click=${() => set(key)}>×</button></li>`)}
        <li><button type="button" class="button plain" @click=${() => set()}>${t('page.findings.filterAll')}</button></li></ul>
      ${warnings(only).map(text => html`<p class="soft small">${text}</p>`)}`}
    ${choices.length === 0 ? nothing : html`<details class="fold no-print"><summary>${t('page.findings.filter')}</summary>
      ${picker(choices, only, facet, words, set, open)}</details>`}
  </section>`;
}

function named(labels, count) {
  if (labels.length === 0) return nothing;
  const shown = labels.slice(0, MOST_NAMED).join(', ');
  return t(count > MOST_NAMED ? 'page.findings.leftOutMany' : 'page.findings.leftOutNamed', { labels: shown, count: count - MOST_NAMED });
}

/** What a filter does to honesty. */
const warnings = only => [
  t('page.findings.filterCare'),
  ...(only.has('standing') && !only.get('standing').has('failed') ? [t('page.findings.filterSurvivors')] : []),
];

function picker(choices, only, facet, words, set, open) {
  const one = choices.find(({ key }) => key === facet) ?? choices[0];
  return html`<div class="flow">
    <bw-picker always .label=${t('page.findings.filterBy')} .value=${one.key} .options=${choices.map(({ key }) => ({ key, label: facetName(key, words) }))}
      @chosen=${({ detail }) => open(detail)}></bw-picker>
    <fieldset class="ticks"><legend class="unseen">${facetName(one.key, words)}</legend>${one.values.map(({ value, cells }) => html`<label class="tick">
      <input type="checkbox" .checked=${only.get(one.key)?.has(value) ?? false} @change=${({ target }) => set(one.key, value, target.checked)}>
      <span>${valueName(one.key, value, choices, words)} <span class="soft">${t('page.findings.filterCells', { cells })}</span></span></label>`)}</fieldset>
  </div>`;
}

const facetName = (key, words) => (key.startsWith('level.') ? words.parameter(key.slice('level.'.length)) : t(`page.findings.facet.${key}`));

function valueName(key, value, choices, words) {
  if (key === 'standing') return t(`page.findings.standing.${value}`);
  if (key === 'stage') return value ? t(`catalogue.stage.${value}`) : t('page.findings.noStage');
  if (value === '') return t('page.findings.notRecorded');
  if (key.startsWith('level.')) return words.level(key.slice('level.'.length), value);
  return choices.find(choice => choice.key === key)?.values.find(each => each.value === value)?.name ?? value;
}

/** As it travels: what is filtered by and a value, a tab between them. */
export const travelling = only => [...only].flatMap(([key, values]) => [...values].map(value => `${key}\t${value}`));

/** The same with one value more or less, a whole facet less, or nothing at all. */
export function changed(only, facet, value, wanted) {
  if (facet === undefined) return new Map();
  const values = value === undefined ? new Set() : new Set(only.get(facet));
  if (wanted) values.add(value);
  else values.delete(value);
  const next = new Map([...only].filter(([key]) => key !== facet));
  return values.size === 0 ? next : next.set(facet, values);
}
