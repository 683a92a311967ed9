import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** Readings of cells and of the light that do not count, each with its reason. */
export function asides({ report, stations }) {
  const rows = [
    ...report.teams.flatMap(({ cells }) => cells).flatMap(({ label, asides: all }) => all.map(aside => ({ ...aside, what: t(`page.report.aside.${aside.kind}`, { cell: label }) }))),
    ...stations.flatMap(({ name, readings }) => readings.filter(({ setAside }) => setAside.at(-1)?.reason)
      .map(({ readAt, setAside }) => ({ readAt, ...setAside.at(-1), what: t('page.report.aside.station', { station: name }) }))),
  ];
  return html`<section class="flow kept"><h2>${t('page.report.asides')}</h2>
    ${rows.length === 0 ? html`<p>${t('page.report.noAsides')}</p>` : html`<p>${t('page.report.asidesMeans')}</p>
      <table><thead><tr><th scope="col">${t('page.report.asideWhat')}</th><th scope="col">${t('page.report.asideWhy')}</th></tr></thead>
        <tbody>${rows.map(({ what, readAt, reason }) => html`<tr><td>${what}, ${clock(readAt)}</td><td>${t('page.quoted', { words: reason })}</td></tr>`)}</tbody></table>`}</section>`;
}

export const cautions = () => html`<section class="flow kept"><h2>${t('page.report.cautions')}</h2>
  <ul class="notes">${['day', 'few', 'teams', 'ageing', 'certified', 'safety'].map(key => html`<li>${t(`page.report.caution.${key}`)}</li>`)}</ul></section>`;
