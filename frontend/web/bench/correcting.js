/** A reading may take the place of the one before it: both are kept, one counts. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
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
