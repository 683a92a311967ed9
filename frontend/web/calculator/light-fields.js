/** The light, where it was read and where the cell stood: the same fields wherever light is asked for. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { lightUnit, SMALL_LAMPS } from './fields.js';
import { number, pick, slide } from './inputs.js';

const DYES = ['anthocyanin', 'betalain', 'chlorophyll', 'undyed', 'other'];

export const LIGHT_KEYS = ['lamp', 'instrument', 'light', 'dye', 'angle', 'readAt', 'distance'];

export function lightFields(context) {
  const { tried, catalogue } = context;
  return html`
    ${pick('lamp', catalogue.lamps, key => t(`catalogue.lamp.${key}`), context)}
    ${pick('instrument', catalogue.instruments, key => t(`catalogue.instrument.${key}`), readBy(context))}
    ${slide('light', context)}
    ${pick('dye', DYES, key => t(`page.calculator.dye.${key}`), context)}
    ${slide('angle', context, true)}
    ${SMALL_LAMPS.includes(tried.lamp) ? moved(context) : nothing}`;
}

/** Another kind of instrument shows another unit; the digits stay, and what they mean is seen to change. */
const readBy = context => ({
  ...context,
  set: change => context.set({ ...change, light: { ...context.tried.light, unit: lightUnit(change.instrument) } }),
});

const moved = context => html`<fieldset class="flow moved"><legend class="label-line">${t('page.calculator.moved')}</legend>
  <p class="hint">${t('page.calculator.movedHint')}</p>
  ${number('readAt', context, true)}
  ${slide('distance', context, true)}</fieldset>`;
