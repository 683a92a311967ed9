/** The day itself: its state, its settings, and the keys of this screen. */
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import '../pages/day-form.js';
import './day-state.js';
import { LETTERS, lettersOn, switchLetters } from './keys.js';

export function dayPanel({ day, etag, catalogue }, { reload }) {
  return html`<div class="flow">
    <bw-day-state .day=${day} @changed=${reload}></bw-day-state>
    <details class="fold"><summary>${t('page.desk.edit')}</summary>
      <div class="narrow"><bw-day-form .key=${day.id} .day=${day} .etag=${etag} .catalogue=${catalogue}
        .label=${t('page.desk.save')} @saved=${reload}></bw-day-form></div></details>
    <details class="fold"><summary>${t('page.desk.keys')}</summary><div class="flow">
      <dl class="keys">${LETTERS.map(letter => html`<div><dt><kbd>${letter}</kbd></dt><dd>${t(`page.desk.key.${letter}`)}</dd></div>`)}
        <div><dt><kbd>Esc</kbd></dt><dd>${t('page.desk.key.escape')}</dd></div></dl>
      <label class="tick"><input type="checkbox" .checked=${lettersOn()} @change=${event => switchLetters(event.target.checked)}>
        <span>${t('page.desk.letters')}</span></label></div></details>
  </div>`;
}
