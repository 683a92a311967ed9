import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { paperAddress } from './address.js';

/** Every table for paper records: what it is for, its columns, and a button that fetches it empty. */
export function templates(tables) {
  return html`<ul class="bare">${tables.map(({ table, columns }) => html`<li class="table">
    <div class="head"><div><h4>${t(`page.data.paperTable.${table}`)}</h4><p class="soft">${t(`page.data.paperMeans.${table}`)}</p></div>
      <a class="button quiet" href=${paperAddress(table)} download aria-label=${t('page.data.fetchOne', { table: t(`page.data.paperTable.${table}`) })}>${t('page.data.fetch')}</a></div>
    <details class="fold"><summary>${t('page.data.paperColumns')}</summary>${list(columns, t(`page.data.paperTable.${table}`))}</details>
  </li>`)}</ul>`;
}

function list(columns, title) {
  return html`<table class="columns"><caption class="unseen">${title}</caption>
    <thead><tr><th scope="col">${t('page.data.column')}</th><th scope="col">${t('page.data.meaning')}</th></tr></thead>
    <tbody>${columns.map(column => html`<tr><th scope="row"><code>${spaced(column.name)}</code></th><td>${meaning(column)}</td></tr>`)}</tbody></table>`;
}

function meaning({ meaning: words, needed, names, choices }) {
  return html`${words}${needed ? html` <span class="soft small">(${t('page.data.paperNeeded')})</span>` : nothing}
    ${names.length > 1 ? html`<span class="soft small">${t('page.data.paperUnits', { names: names.slice(1).join(', ') })}</span>` : nothing}
    ${choices.length > 0 ? html`<p class="soft small">${t('page.data.paperOneOf', { choices: choices.map(choiceWords).join(' · ') })}</p>` : nothing}`;
}

const choiceWords = ({ key, words }) => (key === words ? key : `${key} (${words})`);

/** A long name may break after its underscores. */
const spaced = name => name.split('_').flatMap((part, i) => (i === 0 ? [part] : [html`_<wbr>`, part]));
