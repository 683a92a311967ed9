import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { downloads, jointOf } from './downloads.js';
import { chance, rounded } from './figures.js';

const MOST_LEVELS = 12;

/** All parameters in one model: what each level gives with all else at its mean. */
export function joint({ joint: model }, words) {
  if (!model) return nothing;
  return html`<section class="flow"><h2>${t('page.findings.joint')}</h2>
    <p class="soft">${t('page.findings.jointLead', { cells: model.n, teams: model.teams })}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.findings.joint')}><table class="joint">
      <thead><tr><th scope="col">${t('page.findings.parameterName')}</th><th scope="col">${t('page.findings.level')}</th>
        <th scope="col" class="number">${words.measure.mean}</th><th scope="col" class="number">${t('page.findings.interval')}</th>
        <th scope="col" class="number">${t('page.findings.corrected')}</th></tr></thead>
      ${model.terms.map(term => html`<tbody>${shown(term).map((mean, at, all) => row(term, mean, at, all.length, words))}</tbody>`)}
    </table></div>
    <p>${t('page.findings.spread', { team: rounded(Math.exp(model.teamDeviation)), cell: rounded(Math.exp(model.cellDeviation)) })}</p>
    ${downloads({ name: 'together', data: () => jointOf(model, words), picture: false })}
    ${model.left.length === 0 ? nothing : html`<p class="soft">${t('page.findings.jointLeft', { names: model.left.map(words.parameter).join(', ') })}</p>`}
  </section>`;
}

/** Of many levels the lowest and the highest; all of them are in the data. */
function shown({ means }) {
  if (means.length <= MOST_LEVELS) return means;
  const rising = [...means].sort((a, b) => a.value - b.value);
  return [rising[0], rising.at(-1)];
}

function row(term, { level, value, interval }, at, span, words) {
  return html`<tr>${at === 0 ? html`<th scope="rowgroup" rowspan=${span}>${words.parameter(term.parameter)}
    ${span < term.means.length ? html`<br><span class="soft small">${t('page.findings.extremes', { count: term.means.length })}</span>` : nothing}</th>` : nothing}
    <td>${words.level(term.parameter, level)}</td>
    <td class="number">${words.value(value)}</td><td class="number">${words.value(interval.low)} – ${words.value(interval.high)}</td>
    ${at === 0 ? html`<td class="number" rowspan=${span}>p ${chance(term.holm)}</td>` : nothing}</tr>`;
}
