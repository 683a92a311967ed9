import { t } from '../core/texts.js';
import { levelTable } from '../findings/levels.js';
import { next } from '../findings/next.js';
import { compared } from '../findings/overview.js';
import { html, nothing } from '../kit/kit.js';

const SHOWN_IN_FULL = new Set(['clear', 'suggestive']);

/** What the cells say of each build parameter: a sentence each, and the levels of those that say something. */
export function evidence({ findings, words }) {
  const all = compared(findings);
  return html`<section class="flow"><h2>${t('page.report.findings')}</h2>
    ${all.length === 0 ? html`<p>${t('page.report.nothingCompared')}</p>` : html`<ul class="bare sentences">${all.map(one => html`<li>
      <strong>${words.parameter(one.parameter)}</strong> <span class="tag">${t(`finding.strength.${one.strength}`)}</span><br>${words.sentence(one.sentence, one.parameter)}</li>`)}</ul>`}
    ${all.filter(({ strength }) => SHOWN_IN_FULL.has(strength)).map(one => html`<div class="kept findings"><h3>${words.parameter(one.parameter)}</h3>${levelTable(one, words)}</div>`)}
    ${next(findings.study, words)}</section>`;
}

/** How many cells came through, and at which step the others were lost. */
export function losses({ findings: { cells }, catalogue }) {
  const lostAt = key => cells.filter(({ failedStage }) => failedStage === key);
  const rows = catalogue.stages.map(({ key }) => [key, lostAt(key)]).filter(([, lost]) => lost.length > 0);
  return html`<section class="flow kept"><h2>${t('page.report.yield')}</h2>
    <p>${t('page.report.yieldWords', { all: cells.length, lost: cells.filter(({ standing }) => standing === 'failed').length })}</p>
    ${rows.length === 0 ? nothing : html`<table><thead><tr><th scope="col">${t('page.report.lostAt')}</th><th scope="col">${t('page.report.lostCells')}</th></tr></thead>
      <tbody>${rows.map(([key, lost]) => html`<tr><th scope="row">${t(`catalogue.stage.${key}`)}</th><td>${lost.length}: ${lost.map(({ label }) => label).join(', ')}</td></tr>`)}</tbody></table>`}</section>`;
}
