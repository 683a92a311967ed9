import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { allTablesAddress, tableAddress } from './address.js';
import { grouped, nameOf } from './groups.js';

const READERS = ['spreadsheet', 'program'];

/**
 * Every table with what it holds, its rows and columns, and a button that fetches it.
 * @param reader what it is written for, `spreadsheet` or `program`; `choose(reader)` changes it
 */
export function tables(labDayId, resources, reader, choose) {
  return html`<section class="flow">
    <h2>${t('page.data.tables')}</h2>
    <p>${t('page.data.tablesLead')}</p>
    <div class="card flow">
      <bw-choices .legend=${t('page.data.reader')} .value=${reader} @chosen=${({ detail }) => choose(detail)}
        .options=${READERS.map(key => ({ key, label: t(`page.data.readerName.${key}`) }))}></bw-choices>
      <p class="soft" role="status">${t(`page.data.readerMeans.${reader}`)}</p>
    </div>
    <div class="card flow"><h3>${t('page.data.all')}</h3><p>${t('page.data.allMeans', { tables: resources.length })}</p>
      <p><a class="button quiet" href=${allTablesAddress(labDayId)} download>${t('page.data.allFetch')}</a></p></div>
    ${grouped(resources).map(([group, few]) => html`<section class="group"><h3>${t(`page.data.group.${group}`)}</h3>
      <ul class="bare card">${few.map(table => row(labDayId, table, reader))}</ul></section>`)}
  </section>`;
}

function row(labDayId, table, reader) {
  return html`<li class="table">
    <div class="head"><div><h4>${table.title} <span class="rows">${rowWords(table.rows)}</span></h4>
      <p class="soft">${table.description}</p></div>
      ${table.rows === 0 ? nothing : html`<a class="button quiet" href=${tableAddress(labDayId, nameOf(table), reader)} download
        aria-label=${t('page.data.fetchOne', { table: table.title })}>${t('page.data.fetch')}</a>`}</div>
    <details class="fold"><summary>${t('page.data.columns', { columns: table.schema.fields.length })}</summary>${columns(table)}</details>
  </li>`;
}

const rowWords = rows => (rows === 1 ? t('page.data.oneRow') : t('page.data.rows', { rows }));

function columns({ schema: { fields }, title }) {
  return html`<table class="columns"><caption class="unseen">${title}</caption>
    <thead><tr><th scope="col">${t('page.data.column')}</th><th scope="col">${t('page.data.unit')}</th><th scope="col">${t('page.data.meaning')}</th></tr></thead>
    <tbody>${fields.map(field => html`<tr><th scope="row"><code>${spaced(field.name)}</code></th><td>${field.unit ?? '–'}</td>
      <td>${field.description}${hint(field)}</td></tr>`)}</tbody></table>`;
}

/** A long name may break after its underscores. */
const spaced = name => name.split('_').flatMap((part, i) => (i === 0 ? [part] : [html`_<wbr>`, part]));

const hint = ({ type }) => (['datetime', 'boolean', 'date'].includes(type) ? html` <span class="soft small">${t(`page.data.type.${type}`)}</span>` : nothing);
