import { clock } from '../core/format.js';
import { post } from '../core/http.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { archiveAddress } from './address.js';
import { rowsOf } from './groups.js';

/**
 * The way out for a day: what goes, the archive first, and the title typed once more.
 * @param fetchedAt when this page began to fetch the archive, or null
 * @param fetched is called when it does; `gone` when the day is deleted
 */
export function removal(day, resources, { fetchedAt, fetched, gone }) {
  return html`<section class="card removal flow">
    <h2>${t('page.data.remove')}</h2>
    <p>${t('page.data.removeMeans', countsOf(resources))}</p>
    <p><strong>${t('page.data.noWayBack')}</strong></p>
    <bw-notice tone=${fetchedAt ? 'fine' : 'unusual'} .text=${fetchedAt
      ? t('page.data.archiveFetched', { time: clock(fetchedAt) }) : t('page.data.archiveFirst')}
      .more=${html`<a class="button quiet" href=${archiveAddress(day.id)} download @click=${fetched}>${t('page.data.archiveFetch')}</a>`}></bw-notice>
    <bw-form .label=${t('page.data.removeSend')} .send=${send} .fields=${html`
      <bw-field name="title" maxlength="80" .label=${t('page.data.typeTitle')} .hint=${t('page.data.typeTitleHint', { title: day.title })}></bw-field>`}></bw-form>
  </section>`;

  async function send({ title }) {
    await post(`/api/labdays/${day.id}/removal`, { title });
    gone();
  }
}

const countsOf = resources => ({
  teams: rowsOf(resources, 'teams'), cells: rowsOf(resources, 'cells'), readings: rowsOf(resources, 'readings'),
});
