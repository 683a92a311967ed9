/** The inputs of the calculator: a number with its slider, a number alone, a choice. Each reports through `set`. */
import '../entry/entry.js';
import '../entry/slide.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { fieldOf, slideField } from './fields.js';

/** Quantities in which a factor counts, so that their slider gives each factor the same way. */
const BY_FACTOR = ['light', 'current', 'area', 'reference', 'readAt', 'distance', 'photocurrent', 'saturation', 'series', 'shunt'];

export const slide = (name, { tried, catalogue, set }, optional = false) => html`<bw-slide .name=${name} .optional=${optional}
  .label=${t(`page.calculator.field.${name}`)} .field=${slideField(name, catalogue, tried.instrument)} .units=${catalogue.units}
  .value=${tried[name]} .log=${BY_FACTOR.includes(name)} @entered=${event => set({ [name]: event.detail })}></bw-slide>`;

export const number = (name, { tried, catalogue, set }, optional = false) => html`<bw-entry free .name=${name} .optional=${optional}
  .label=${t(`page.calculator.field.${name}`)} .field=${fieldOf(name, catalogue, tried.instrument)} .units=${catalogue.units}
  .value=${tried[name]} @entered=${event => set({ [name]: event.detail })}></bw-entry>`;

/** One of a few, `wordOf` gives each its label. */
export const choice = (name, keys, wordOf, { tried, set }) => html`<bw-choices .name=${name} .legend=${t(`page.calculator.field.${name}`)}
  .value=${tried[name]} .options=${keys.map(key => ({ key, label: wordOf(key) }))}
  @chosen=${event => set({ [name]: event.detail })}></bw-choices>`;

/** One of many, in a list that opens. */
export const pick = (name, keys, wordOf, { tried, set }) => html`<bw-picker .name=${name} .label=${t(`page.calculator.field.${name}`)}
  always .value=${tried[name]} .options=${keys.map(key => ({ key, label: wordOf(key) }))}
  @chosen=${event => set({ [name]: event.detail })}></bw-picker>`;
