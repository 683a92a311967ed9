/** Which team builds what, each cell open to a change by hand. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { levelWords, parameterName, teamName } from './names.js';

/** `change({label, parameter, level})` is called when somebody picks another level. */
export function table({ settings, cells }, catalogue, change) {
  const teams = [...new Set(cells.map(({ team }) => team))];
  return html`<section class="flow dealt" aria-labelledby="dealt"><h2 id="dealt">${t('page.plan.dealt')}</h2>
    <p class="soft small no-print">${t('page.plan.dealtLead')}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.plan.tableOf', { what: t('page.plan.dealt') })}><table class="cells">
      <thead><tr><th>${t('page.plan.teamHead')}</th><th>${t('page.plan.cell')}</th>${settings.factors.map(({ parameter }) => html`<th>${parameterName(parameter)}</th>`)}<th class="no-print">${t('page.plan.made')}</th></tr></thead>
      ${teams.map(team => body(cells.filter(cell => cell.team === team), team, { settings, cells }, catalogue, change))}
    </table></div>
    <p class="small soft">${t('page.plan.sameForAll')} ${settings.fixed.map(value => `${parameterName(value.parameter)}: ${levelWords(value, catalogue)}`).join(' · ') || t('page.plan.nothingSame')}</p></section>`;
}

function body(own, team, { settings, cells }, catalogue, change) {
  return html`<tbody>${own.map((cell, i) => html`<tr>
    ${i === 0 ? html`<th scope="rowgroup" rowspan=${own.length}>${teamName(team, cells)}</th>` : nothing}
    <td><strong>${cell.label}</strong>${cell.byHand ? html` <span class="tag">${t('page.plan.byHand')}</span>` : nothing}${cell.kind === 'planned' ? nothing : html` <span class="soft small">${t(`page.plan.kind.${cell.kind}`)}</span>`}</td>
    ${settings.factors.map((factor, place) => html`<td>${cell.kind === 'planned' ? pick(cell, factor, place, catalogue, change) : classLevel(cell, factor, catalogue)}</td>`)}
    <td class="no-print">${made(cell, catalogue)}</td></tr>`)}</tbody>`;
}

function pick({ label, levels }, { parameter, levels: all }, place, catalogue, change) {
  return html`<select aria-label="${label}, ${parameterName(parameter)}" @change=${event => change({ label, parameter, level: Number(event.target.value) })}>
    ${all.map((level, i) => html`<option value=${i} .selected=${i === levels[place]}>${levelWords({ parameter, ...level }, catalogue)}</option>`)}</select>
    <span class="printed">${levelWords({ parameter, ...all[levels[place]] }, catalogue)}</span>`;
}

const classLevel = ({ recipe }, { parameter }, catalogue) => levelWords(recipe.find(value => value.parameter === parameter), catalogue);

/** What became of it: the registered cell, and where it differs. */
function made({ cellLabel, deviations }, catalogue) {
  if (!cellLabel) return nothing;
  return html`${cellLabel}${deviations.map(({ planned, made: built }) => html`<br><span class="tag unusual">${parameterName(planned.parameter)}: ${levelWords(built, catalogue)}</span>`)}`;
}
