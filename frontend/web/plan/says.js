/** What a plan can tell: sentences first, the numbers behind them. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { levelWords, parameterName, percent, ratio, sentence } from './names.js';

const SIGNS = { good: 'fine', weak: 'unusual', cannot: 'impossible' };

export function says(plan, catalogue) {
  return html`<section class="flow says" aria-labelledby="says"><h2 id="says">${t('page.plan.says')}</h2>
    <ul class="bare">${plan.says.map(line)}</ul>
    <details class="fold numbers"><summary>${t('page.plan.numbers')}</summary><div class="flow">${numbers(plan, catalogue)}</div></details></section>`;
}

function line(said) {
  const sign = SIGNS[said.weight];
  return html`<li class="said ${said.weight}">${sign ? html`<bw-icon name=${sign} .label=${t(`page.plan.weight.${said.weight}`)}></bw-icon>` : html`<span aria-hidden="true">·</span>`}
    <span>${sentence(said)}</span></li>`;
}

function numbers({ figures, settings }, catalogue) {
  return html`<p class="small">${t('page.plan.efficiency', { efficiency: percent(figures.efficiency), cells: figures.cells, teams: figures.teams, spare: figures.spareCells })}</p>
    <p class="small">${t(`page.plan.spreadFrom.${figures.spreadFrom}`, { spread: Math.round(100 * figures.spread) / 100, cells: figures.spreadCells })}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.plan.tableOf', { what: t('page.plan.numbers') })}><table>
      <thead><tr><th>${t('page.plan.parameter')}</th><th>${t('page.plan.counts')}</th><th class="number">${t('page.plan.comparing')}</th>
        <th class="number">${t('page.plan.precision')}</th><th class="number">${t('page.plan.power', { ratio: settings.ratio })}</th><th class="number">${t('page.plan.smallest')}</th></tr></thead>
      <tbody>${figures.factors.map((factor, i) => row(factor, settings.factors[i], catalogue))}</tbody></table></div>
    ${figures.factors.some(({ aliases }) => aliases.length) ? mixtures(figures) : nothing}`;
}

function row(factor, { parameter, levels }, catalogue) {
  const counts = levels.map((level, i) => `${levelWords({ parameter, ...level }, catalogue)} ${factor.counts[i]}`).join(', ');
  return html`<tr><th scope="row">${parameterName(parameter)}</th><td>${counts}</td><td class="number">${factor.teamsComparing}</td>
    <td class="number">${percent(factor.efficiency)}</td><td class="number">${factor.power == null ? '–' : percent(factor.power)}</td>
    <td class="number">${factor.smallestRatio == null ? '–' : `×${ratio(factor.smallestRatio)}`}</td></tr>`;
}

function mixtures({ factors }) {
  return html`<h3>${t('page.plan.mixedUp')}</h3><ul class="small mixed">${factors.flatMap(({ parameter, aliases }) => aliases.slice(0, 4).map(({ with: others, correlation }) => html`<li>
    ${t(`page.plan.alias.${others.length}`, { factor: parameterName(parameter), one: parameterName(others[0] ?? ''), two: parameterName(others[1] ?? '') })}: ${percent(correlation)}</li>`))}</ul>`;
}
