/** What was corrected, kept: the earlier values of stages and readings, who wrote them and when. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { readingWords } from './words.js';

export function history(cell, readings, units) {
  const rows = earlierOf(cell, readings, units);
  if (rows.length === 0) return nothing;
  return html`<details class="fold"><summary>${t('page.bench.history', { count: rows.length })}</summary>
    <ul class="bare earlier">${rows.map(({ name, was, at, by }) => html`<li><strong>${name}</strong> ${was}
      <span class="soft small">${t(by === 'teacher' ? 'page.bench.history.byTeacher' : 'page.bench.history.byTeam', { time: clock(at) })}</span></li>`)}</ul></details>`;
}

/** Everything that no longer counts since something newer stands in its place, oldest first. */
function earlierOf(cell, readings, units) {
  return [...earlierOutcomes(cell).map(outcomeRow), ...readings.filter(({ replacedBy }) => replacedBy).map(reading => readingRow(reading, units))]
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

/** Corrected ones, and those of a stage that was done again. */
export function earlierOutcomes({ outcomes }) {
  const accepted = outcomes.filter(({ acceptedAt }) => acceptedAt);
  return accepted.filter((outcome, i) => outcome.replacedBy || accepted.slice(i + 1).some(later => later.stage === outcome.stage && !later.replacedBy));
}

const outcomeRow = ({ stage, passed, failure, note, acceptedAt, by }) => ({
  name: t(`catalogue.stage.${stage}`),
  was: [passed ? t('page.bench.worked') : t(`catalogue.failure.${failure}`), note && t('page.quoted', { words: note })].filter(Boolean).join(' '),
  at: acceptedAt, by,
});

const readingRow = (reading, units) => ({
  name: t(`page.bench.reading.${reading.kind}`), was: readingWords({ ...reading, readAt: null }, units), at: reading.acceptedAt, by: reading.by,
});
