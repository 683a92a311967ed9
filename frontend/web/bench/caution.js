/** What can hurt at a step of a cell, whether its team may begin, and who decides: never this tool. */
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { hazardNotes } from '../safety/hazard-notes.js';
import { gatesOf, hazardsOf } from '../safety/hazards.js';
import { safetyWatch } from '../safety/watch.js';
import { zoneState } from '../safety/zone-state.js';

/** `stage` is {key, hot}; `cell` has teamId, recipe, and labDayId once the server knows it; `over`: the step is done. */
class Caution extends PageElement {
  static properties = { stage: { attribute: false }, cell: { attribute: false }, over: { type: Boolean } };

  connectedCallback() {
    super.connectedCallback();
    this.end = safetyWatch.start(this.cell?.labDayId, () => this.requestUpdate());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.end();
  }

  render() {
    return html`<div class="caution">
      ${safetyWatch.catalogue ? this.#notes(safetyWatch) : html`<p>${t(`page.bench.caution.${this.stage.key}`)}</p>`}
      <p class="small">${t('page.bench.caution.defer')}</p></div>`;
  }

  #notes({ catalogue, signOffs }) {
    const hazards = hazardsOf(catalogue, this.stage.key, this.cell.recipe);
    return html`${zoneState(gatesOf(catalogue, hazards), signOffs, this.cell.teamId, safetyWatch.now())}
      ${this.over ? this.#folded(hazards) : hazardNotes(hazards)}`;
  }

  #folded(hazards) {
    return hazards.length ? html`<details class="fold"><summary>${t('page.safety.hazards', { count: hazards.length })}</summary>
      <div class="caution">${hazardNotes(hazards)}</div></details>` : nothing;
  }
}

customElements.define('bw-caution', Caution);

/** Before a step: everything. @param stage {key, hot}, @param cell the cell whose step it is */
export const caution = (stage, cell) => html`<bw-caution .stage=${stage} .cell=${cell}></bw-caution>`;

/** After a step, when it is written down: whether the team was signed off, the hazards in a fold. */
export const cautionAfter = (stage, cell) => html`<bw-caution over .stage=${stage} .cell=${cell}></bw-caution>`;
