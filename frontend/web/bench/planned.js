/** The cells that the plan gives this team: one tap fills the form in. */
import { has, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { unitOf } from '../entry/wording.js';

/** What is planned and not registered yet; `chosen` is the label of the one taken, `take(planned)` takes one. */
export function plannedCells({ plannedOpen, catalogue }, chosen, take) {
  if (plannedOpen.length === 0) return nothing;
  return html`<fieldset class="planned"><legend class="label-line">${t('page.bench.planned')}</legend>
    <div class="flow">${plannedOpen.map(planned => html`<button type="button" class="slide ${planned.label === chosen ? 'now' : ''}" aria-pressed=${planned.label === chosen ? 'true' : 'false'}
      @click=${() => take(planned)}><span class="label">${planned.label}</span><span class="body">${plannedWords(planned, catalogue)}</span></button>`)}</div>
    <div role="status">${chosen ? html`<p class="small">${t('page.bench.plannedTaken', { label: chosen })}</p>` : nothing}</div></fieldset>`;
}

/** What sets it apart from the others: the values that the plan varies stand first in a recipe. */
const plannedWords = ({ recipe, levels }, catalogue) => recipe.slice(0, levels.length).map(value => words(value, catalogue)).join(' · ');

function words({ parameter, text, unit }, { units }) {
  const level = `catalogue.level.${parameter}.${text}`;
  if (has(level)) return t(level);
  const name = has(`catalogue.parameter.${parameter}`) ? t(`catalogue.parameter.${parameter}`) : parameter;
  return unit ? `${name} ${text} ${unitOf(unit, units)?.symbols[0] ?? ''}`.trim() : `${name}: ${text}`;
}

/** Where a cell was built otherwise than planned; recorded, never wrong. */
export function otherwiseThanPlanned({ planned, catalogue }, cellId) {
  const own = planned.find(each => each.cellId === cellId);
  if (!own) return nothing;
  return html`<p class="soft small">${t('page.bench.plannedIs', { label: own.label })}
    ${own.deviations.length ? t('page.bench.plannedOtherwise', { what: own.deviations.map(({ planned: meant, made }) => `${words(made, catalogue)} (${words(meant, catalogue)})`).join(', ') }) : nothing}</p>`;
}
