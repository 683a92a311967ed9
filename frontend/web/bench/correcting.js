/** A reading may take the place of the one before it: both are kept, one counts. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { to } from './routes.js';
import { readingWords, setAsideReason } from './words.js';

/** The latest reading of a kind that the server knows and nothing has replaced, or null. */
export const latestKnown = (data, cellId, kind) => data.readings(cellId).filter(each => each.kind === kind && !each.pending).at(-1) ?? null;

/** The readings of a kind whose numbers may be mended here: on the server, counting, oldest first. */
export const correctable = (data, cellId, kind) => data.readings(cellId).filter(each => each.kind === kind && !each.pending && !setAsideReason(each));

/** The tick that says so; nothing where there is nothing to correct. */
export function correctsTick(earlier, ticked, units, change) {
  return earlier ? html`<label class="tick"><input type="checkbox" .checked=${Boolean(ticked)} @change=${event => change(event.target.checked)}>
    <span>${t('page.bench.corrects', { reading: readingWords(earlier, units) })}</span></label>` : nothing;
}

/** The way to mend the numbers of the latest one instead of reading anew. */
export function mendLatest(data, cellId, kind) {
  const last = correctable(data, cellId, kind).at(-1);
  return last ? html`<p class="small"><a href=${to(kind, cellId, last.id)}>${t(`page.bench.instead.${kind}`, { time: clock(last.readAt) })}</a></p>` : nothing;
}

/** Numbers that differ here and there do not speak for themselves. */
export const reasonField = (reason, change) => html`<bw-field name="reason" maxlength="120" .label=${t('page.bench.correctionReason')}
  .hint=${t('page.bench.correctionReasonHint')} .value=${reason} @typed=${event => change(event.detail)}></bw-field>`;

/** The tick that an unusual number is what the meter showed. */
export const unusualTick = (ticked, change) => html`<label class="tick"><input type="checkbox" .checked=${Boolean(ticked)}
  @change=${event => change(event.target.checked)}><span>${t('page.bench.sweepUnusual')}</span></label>`;
