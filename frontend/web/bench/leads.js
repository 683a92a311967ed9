/** A covered cell read with the leads both ways: what turns its sign is the cell's, what stays is the meter's zero. */
import { prefixed } from '../core/format.js';
import { readNumber } from '../core/quantity.js';
import { t } from '../core/texts.js';
import { verdictOn } from '../entry/echo.js';
import { html, nothing } from '../kit/kit.js';

const UNITS = { voltage: 'V', current: 'A' };

/** {own, zero, consistent} in SI of two amounts {valueSi, resolutionSi}; null while one is missing. */
export function leadsOf(straight, swapped, zeroSteps) {
  if (!straight || !swapped) return null;
  const zero = (straight.valueSi + swapped.valueSi) / 2;
  const limit = zeroSteps * Math.max(straight.resolutionSi, swapped.resolutionSi);
  return { own: (straight.valueSi - swapped.valueSi) / 2, zero, consistent: Math.abs(zero) <= limit * (1 + 1e-9) };
}

/** What a draft's pairs tell: [[quantity, {own, zero, consistent}]] for those that can be read. */
export function pairsOf(draft, { fields, units, meterZeroSteps }) {
  const amount = (key, { text = '', unit } = {}) => {
    const field = fields.find(each => each.key === key);
    return verdictOn(readNumber(text, unit ?? field.units[0], [field.quantity], units), field, units).amount;
  };
  return Object.keys(UNITS)
    .map(key => [key, leadsOf(amount(key, draft[key]), amount(key, draft[swappedKey(key)]), meterZeroSteps)])
    .filter(([, found]) => found);
}

export const swappedKey = key => `swapped${key[0].toUpperCase()}${key.slice(1)}`;

/** The echo of the pairs: the cell's part and the meter's, or a question about a pair that is none. */
export function leadsEcho(pairs, confirmed, confirm) {
  if (pairs.length === 0) return nothing;
  const doubtful = pairs.some(([, { consistent }]) => !consistent);
  return html`<div role="status">${pairs.map(([key, found]) => line(key, found))}
    ${doubtful ? html`<label class="tick"><input type="checkbox" .checked=${Boolean(confirmed)} @change=${event => confirm(event.target.checked)}>
      <span>${t('page.bench.leads.confirm')}</span></label>` : nothing}</div>`;
}

function line(key, { own, zero, consistent }) {
  const tone = consistent ? 'fine' : 'unusual';
  const words = { own: prefixed(own, UNITS[key]), zero: prefixed(zero, UNITS[key]) };
  return html`<p class="echo ${tone}"><bw-icon name=${tone}></bw-icon>
    <span>${t(consistent ? `page.bench.leads.${key}` : 'page.bench.leads.doubtful', words)}</span></p>`;
}
