import { fixed } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { downloads, pairsOf } from './downloads.js';

/** What changed together: first in words, then as a map of every two parameters. */
export function together({ confounding, aliasSets }, words) {
  if (confounding.length === 0) return nothing;
  const names = [...new Set(confounding.flatMap(({ first, second }) => [first, second]))];
  const title = t('page.findings.together');
  return html`<section class="flow"><h2>${title}</h2>
    ${aliasSets.length === 0 ? html`<p>${t('page.findings.noAlias')}</p>` : html`<ul class="notes">${aliasSets.map(set =>
      html`<li>${t('page.findings.alias', { names: set.map(words.parameter).join(' + ') })}</li>`)}</ul>`}
    <details class="fold"><summary>${t('page.findings.map')}</summary>
      <p class="soft small">${t('page.findings.mapCaption')}</p>
      <div class="scroll" tabindex="0" role="region" aria-label=${title}><table class="map">
        <thead><tr><td></td>${names.slice(0, -1).map(name => html`<th scope="col">${words.parameter(name)}</th>`)}</tr></thead>
        <tbody>${names.slice(1).map((row, at) => html`<tr><th scope="row">${words.parameter(row)}</th>
          ${names.slice(0, at + 1).map(column => cell(confounding, row, column))}</tr>`)}</tbody>
      </table></div>${downloads({ name: 'changed-together', data: () => pairsOf(confounding), picture: false })}</details>
  </section>`;
}

function cell(pairs, one, other) {
  const pair = pairs.find(({ first, second }) => [first, second].includes(one) && [first, second].includes(other));
  if (!pair) return html`<td></td>`;
  const hidden = pair.firstTold === 0 || pair.secondTold === 0;
  const grade = hidden ? 'hidden' : pair.cramersV >= 0.6 ? 'close' : 'loose';
  return html`<td class="number ${grade}">${fixed(pair.cramersV, 1)}${hidden ? html` <span title=${t('page.findings.hidden')}>⇄</span>` : nothing}</td>`;
}
