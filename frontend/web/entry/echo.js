/** What was understood, before anything is stored: fine, unusual (a tick), impossible (the likely slip), or a choice. */
import { t } from '../core/texts.js';
import { judge, settle } from '../core/plausibility.js';
import { html, nothing } from '../kit/kit.js';
import { otherwise, range, symbolOf, typedAmount, unitOf } from './wording.js';

/** The verdict on what stands in a field: {tone, kind, amount, likely}. Tones: empty, fine, unusual, impossible, ask. */
export function verdictOn(read, field, units) {
  const understanding = settle(field, read);
  if (understanding.kind === 'misunderstood') {
    return { tone: understanding.slip === 'EMPTY' ? 'empty' : 'impossible', slip: understanding };
  }
  if (understanding.kind === 'ambiguous') return { tone: 'ask', amounts: understanding.amounts };
  const [amount] = understanding.amounts;
  const { verdict, likely } = judge(field, amount, units);
  return { tone: verdict, amount, likely };
}

/** Draws a verdict. `act` = {confirm(ticked), choose(amount), changeUnit(unit)}; `confirmed` the state of the tick, which `free` leaves out. */
export function echo(verdict, { field, units, unitKey, free, confirmed, act }) {
  const draw = { fine, unusual, impossible, ask }[verdict.tone];
  return draw ? draw(verdict, { field, units, unitKey, free, confirmed, act }) : nothing;
}

function fine({ amount }, { field, units }) {
  return line('fine', sameAs(amount, field, units));
}

function unusual({ amount, likely }, { field, units, free, confirmed, act }) {
  const shown = typedAmount(amount, units);
  return html`${line('unusual', `${t('page.entry.unusual', { amount: shown })} ${usual(field, amount.unit, units)}`)}
    ${suggestion(likely, amount, units, act)}
    ${free ? nothing : html`<label class="tick"><input type="checkbox" .checked=${confirmed} @change=${event => act.confirm(event.target.checked)}>
      <span>${t('page.entry.confirm', { amount: shown })}</span></label>`}`;
}

function impossible({ amount, likely, slip }, { field, units, unitKey, act }) {
  if (slip) return line('impossible', t(`page.entry.slip.${slip.slip}`, slip));
  const limits = range(field.possibleLowSi, field.possibleHighSi, unitOf(amount.unit ?? unitKey, units));
  return html`${line('impossible', t('page.entry.impossible', { amount: typedAmount(amount, units), ...limits }))}
    ${suggestion(likely, amount, units, act)}`;
}

function ask({ amounts }, { units, act }) {
  return html`${line('unusual', t('page.entry.ambiguous'))}
    <div class="beside">${amounts.map(amount => html`
      <button type="button" class="button quiet" @click=${() => act.choose(amount)}>${typedAmount(amount, units)}</button>`)}</div>`;
}

function suggestion(likely, amount, units, act) {
  if (!likely) return nothing;
  const typed = unitOf(amount.unit, units);
  const digits = typedAmount(amount, units).replace(` ${symbolOf(typed)}`, '');
  return html`<button type="button" class="button quiet" @click=${() => act.changeUnit(likely)}>
    ${t('page.entry.perhaps', { amount: `${digits} ${symbolOf(likely)}` })}</button>`;
}

/** "Usual: −300 to 900 mV". */
export const usual = (field, unitKey, units) =>
  t('page.entry.usual', range(field.usualLowSi, field.usualHighSi, unitOf(unitKey, units)));

function sameAs(amount, field, units) {
  const other = otherwise(amount, field, units);
  return other ? `${typedAmount(amount, units)} = ${other}` : typedAmount(amount, units);
}

const line = (tone, sentence) =>
  html`<p class="echo ${tone}"><bw-icon name=${tone}></bw-icon><span>${sentence}</span></p>`;
