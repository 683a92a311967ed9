/** Registers a cell before it is baked, or corrects its recipe. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { BenchForm } from './bench-form.js';
import { buildValues, recipeFields } from './recipe-fields.js';
import { back } from './cell-view.js';

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
    const { catalogue } = this.data;
    return html`${this.cellId ? back('cell', this.cellId) : back()}
      <h1>${t(this.cellId ? 'page.bench.recipeOf' : 'page.bench.register', { label })}</h1>
      ${this.cellId ? nothing : html`<p class="soft">${t('page.bench.registerLead')}</p>`}
      ${this.edits ? nothing : html`<bw-field name="label" look="label" maxlength="12" .label=${t('page.bench.label')}
        .hint=${t('page.bench.labelHint')} .value=${label} @typed=${event => this.change('label', event.detail)}></bw-field>`}
      ${recipeFields(catalogue, recipe, (key, value) => this.change('recipe', { ...this.draft.recipe, [key]: value }))}
      <bw-area name="area" .units=${catalogue.units} .field=${this.data.field('area')} .value=${area}
        @entered=${event => this.change('area', event.detail)}></bw-area>`;
  }

  missing({ label }) {
    return label.trim() ? null : t('page.bench.labelMissing');
  }

  toEntry(draft) {
    const sheet = {
      recipe: buildValues(this.data.catalogue, draft.recipe),
      area: this.querySelector('bw-area').typed,
      noticedAt: new Date().toISOString(),
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
    };
  }
}

function draftOfCell({ label, recipe, area }) {
  const [first = '', second = ''] = (area?.text ?? '').split(/[xX\u00d7*]/).map(side => side.replace(/[a-z\s]/gi, ''));
  const unit = area?.unit ?? /mm|cm/.exec(area?.text)?.[0];
  const values = Object.fromEntries(recipe.map(({ parameter, text, unit }) => [parameter, { text, unit }]));
  return { label, recipe: values, area: area ? { first, second, unit } : {} };
}

customElements.define('bw-register-form', RegisterForm);
