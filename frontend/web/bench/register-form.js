/** Registers a cell before it is baked, or corrects its recipe. */
import { serverClock } from '../core/clock.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { FIRST, MAIN, buildValues, foldedFields, recipeFields, usedFirst } from './recipe-fields.js';
import { back } from './cell-view.js';
import { plannedCells } from './planned.js';

/** With a `cellId` it edits that cell's sheet, else it registers a new cell. */
class RegisterForm extends BenchForm {
  get draftKey() {
    return this.cellId ? `sheet.${this.cellId}` : `new.${this.data.teamId}`;
  }

  get sendLabel() {
    return t(this.edits ? 'page.bench.saveRecipe' : 'page.bench.registerSend');
  }

  /** A cell that the server knows gets a new sheet; one that still waits here is registered with the new recipe. */
  get edits() {
    return Boolean(this.cell) && !this.cell.pending;
  }

  start() {
    return this.cell ? draftOfCell(this.cell) : { label: '', recipe: {}, area: {} };
  }

  fields({ label, recipe, area }) {
    const catalogue = usedFirst(this.data.catalogue, this.data.cells);
    const change = (key, value) => this.change('recipe', { ...this.draft.recipe, [key]: value });
    const shown = this.cellId ? MAIN : FIRST;
    return html`${this.cellId ? back('cell', this.cellId) : back()}
      <h1>${t(this.cellId ? 'page.bench.recipeOf' : 'page.bench.register', { label })}</h1>
      ${this.cellId ? nothing : html`<p class="soft">${t('page.bench.registerLead')}</p>`}
      ${this.cellId ? nothing : plannedCells(this.data, this.draft.planned, planned => this.#plan(planned))}
      ${this.edits ? nothing : html`<bw-field name="label" look="label" maxlength="12" .label=${t('page.bench.label')}
        .hint=${t('page.bench.labelHint')} .value=${label} @typed=${event => this.change('label', event.detail)}></bw-field>`}
      ${this.cellId ? nothing : this.#asIn()}
      ${recipeFields(shown, catalogue, recipe, change)}
      ${this.cellId ? html`${foldedFields(shown, catalogue, recipe, change)}${this.#area(area)}`
        : html`<details class="fold" ?open=${Boolean(this.entry)}><summary>${t('page.bench.moreNow')}</summary>
          <div class="flow">${this.#area(area)}${recipeFields(MAIN.filter(key => !shown.includes(key)), catalogue, recipe, change)}
            ${foldedFields(MAIN, catalogue, recipe, change)}</div></details>`}`;
  }

  #area(area) {
    return html`<bw-area name="area" .units=${this.data.catalogue.units} .field=${this.data.field('area')} .value=${area}
      @entered=${event => this.change('area', event.detail)}></bw-area>`;
  }

  /** A cell that differs in one thing only teaches most: the recipe of another one is a tap away. */
  #asIn() {
    const others = this.data.cells.filter(({ recipe }) => recipe.length);
    if (others.length === 0) return nothing;
    return html`<div><p class="label-line">${t('page.bench.asIn')}</p>
      <div class="beside">${others.map(cell => html`<button type="button" class="button quiet" @click=${() => this.#copy(cell)}>${cell.label}</button>`)}</div>
      <div role="status">${this.draft.copied ? html`<p class="small">${t('page.bench.asInDone', { label: this.draft.copied })}</p>` : nothing}</div></div>`;
  }

  #copy(cell) {
    this.change('recipe', draftOfCell(cell).recipe);
    this.change('copied', cell.label);
  }

  /** A planned cell fills in what it is planned of; whatever is done otherwise is changed here and recorded. */
  #plan(planned) {
    const known = planned.recipe.filter(({ parameter }) => this.data.catalogue.parameters.some(({ key }) => key === parameter));
    this.change('recipe', { ...this.draft.recipe, ...Object.fromEntries(known.map(({ parameter, text, unit }) => [parameter, { text, unit }])) });
    this.change('label', planned.label);
    this.change('planned', planned.label);
  }

  missing({ label }) {
    return label.trim() ? null : t('page.bench.labelMissing');
  }

  toEntry(draft) {
    const sheet = {
      recipe: buildValues(this.data.catalogue, draft.recipe),
      area: this.querySelector('bw-area').typed,
      noticedAt: serverClock.stamp(),
    };
    return this.edits ? this.#correction(sheet) : this.#registration(draft, sheet);
  }

  #correction(sheet) {
    const id = this.entryId;
    return {
      id, path: `/api/cells/${this.cellId}/sheets/${id}`, body: { replaces: this.cell.sheetId, ...sheet },
      about: { kind: 'sheet', cellId: this.cellId, label: this.cell.label },
    };
  }

  #registration(draft, sheet) {
    const id = this.cellId || this.entryId;
    const label = draft.label.trim();
    return {
      id, path: `/api/cells/${id}`, body: { teamId: this.data.teamId, label, ...sheet },
      about: { kind: 'cell', cellId: id, label },
      also: draft.planned ? [this.#plannedAs(id, draft, label)] : [],
    };
  }

  #plannedAs(cellId, { planned }, label) {
    const id = newId();
    return { id, path: `/api/planned-cells/${id}`, body: { cellId, label: planned }, about: { kind: 'planned', cellId, label } };
  }
}

function draftOfCell({ label, recipe, area }) {
  const [first = '', second = ''] = (area?.text ?? '').split(/[xX\u00d7*]/).map(side => side.replace(/[a-z\s]/gi, ''));
  const unit = area?.unit ?? /mm|cm/.exec(area?.text)?.[0];
  const values = Object.fromEntries(recipe.map(({ parameter, text, unit, words }) => [parameter, { text, unit, words }]));
  return { label, recipe: values, area: area ? { first, second, unit } : {} };
}

customElements.define('bw-register-form', RegisterForm);
