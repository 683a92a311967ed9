import { day as dateWords } from '../core/format.js';
import { ask } from '../core/http.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** Which lab days, and what to compare. */
export function chooseDays({ days, picked, measure }, set, start) {
  const tick = (id, wanted) => {
    const next = new Set(picked);
    if (wanted) next.add(id);
    else next.delete(id);
    set({ picked: next });
  };
  return html`<fieldset class="ticks"><legend>${t('page.findings.whichDays')}</legend>
      ${[...days].sort((a, b) => b.date.localeCompare(a.date)).map(({ id, title, date }) => html`<label class="tick">
        <input type="checkbox" .checked=${picked.has(id)} @change=${({ target }) => tick(id, target.checked)}>
        <span>${title} <span class="soft">${dateWords(date)}</span></span></label>`)}</fieldset>
    <bw-choices tall .legend=${t('page.findings.whichMeasure')} .hint=${t('page.findings.whichMeasureHint')} .value=${measure}
      .options=${['power', 'ratioToControl'].map(key => ({ key, label: t(`page.findings.measure.${key}`) }))}
      @chosen=${({ detail }) => set({ measure: detail })}></bw-choices>
    <button type="button" class="button" ?disabled=${picked.size === 0} @click=${start}>${t('page.findings.compareDays', { count: picked.size })}</button>`;
}

/** Asks for the days as they are picked now, whatever is picked later. */
export const daysRequest = ({ picked, measure }) => {
  const days = [...picked];
  return only => ask('/api/findings/days', { days, measure, only });
};
