/** What was read of a cell and what it is brought to: the numbers behind one result. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { choice, number, slide } from './inputs.js';
import { LIGHT_KEYS, lightFields } from './light-fields.js';
import { sweepRows } from './sweep-rows.js';

export const CELL_KEYS = ['from', 'voltage', 'current', 'pair', 'voltageUnit', 'currentUnit', 'rows', 'dark', 'area',
  ...LIGHT_KEYS, 'reference', 'temperature'];

export function cellFields(context) {
  const { tried } = context;
  return html`
    ${choice('from', ['spot', 'sweep'], key => t(`page.calculator.from.${key}`), context)}
    ${tried.from === 'sweep' ? sweepRows(context) : html`${slide('voltage', context)}${slide('current', context)}`}
    ${number('dark', context, true)}
    ${slide('area', context)}
    ${lightFields(context)}
    ${slide('reference', context)}
    ${number('temperature', context, true)}`;
}
