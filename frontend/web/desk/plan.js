import { plain } from '../core/format.js';
import { get } from '../core/http.js';
import { has, t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { toCell } from './route.js';

/** What became of the plan: cells built otherwise than planned, to know, not to act on. `desk` as the Desk loads it. */
class PlanPanel extends PageElement {
  static properties = { desk: { attribute: false }, cells: { state: true } };

  willUpdate(changed) {
    if (changed.has('desk')) this.#load();
  }

  async #load() {
    try {
      this.cells = await get(`/api/labdays/${this.desk.day.id}/plan/cells`);
    } catch {
      // The Desk itself says when the server is silent; what was read stays.
    }
  }

  render() {
    if (!this.cells) return nothing;
    const apart = this.cells.filter(({ deviations }) => deviations.length > 0);
    return html`<section class="flow"><h2>${t('page.desk.plan')}</h2>
      ${this.cells.length === 0 ? html`<p>${t('page.desk.noPlan')}</p>` : html`
        <p class="soft">${t('page.desk.planLead', { made: this.cells.filter(({ cellId }) => cellId).length, planned: this.cells.length })}</p>
        ${apart.length === 0 ? html`<p>${t('page.desk.asPlanned')}</p>` : html`<ul class="bare deviations">${apart.map(cell => this.#cell(cell))}</ul>`}`}
      <p><a href="/plan.html#${this.desk.day.id}">${t('page.desk.toPlan')}</a></p></section>`;
  }

  #cell({ cellId, cellLabel, label, teamName, deviations }) {
    return html`<li><a class="chip" href=${toCell(this.desk.day.id, cellId)}>${cellLabel}</a>
      <span>${teamName} · ${t('page.desk.plannedAs', { label })}<br>${deviations.map(({ planned, made }) => html`
        ${t('page.desk.deviates', { parameter: nameOf(planned.parameter), planned: this.#value(planned), made: this.#value(made) })} `)}</span></li>`;
  }

  #value({ parameter, text, unit }) {
    const key = `catalogue.level.${parameter}.${text}`;
    if (has(key)) return t(key);
    const symbol = unit && this.desk.catalogue.units.find(each => each.key === unit)?.symbols[0];
    const number = Number(text);
    return `${text !== '' && Number.isFinite(number) ? plain(number) : text}${symbol ? `\u00a0${symbol}` : ''}`;
  }
}

const nameOf = parameter => (has(`catalogue.parameter.${parameter}`) ? t(`catalogue.parameter.${parameter}`) : parameter);

customElements.define('bw-plan-panel', PlanPanel);

export const planPanel = desk => html`<bw-plan-panel .desk=${desk}></bw-plan-panel>`;
