/**
 * At which stage a cell is and how it fares there.
 *
 * @param {{outcomes: object[]}} cell
 * @param {string[]} stages keys in the order of building
 * @param {?{standing: string, ranked: boolean}} standing of the cell on the leaderboard
 * @returns {{at: string, state: 'failed' | 'counts' | 'unranked' | 'waits' | 'building'}} `at` a stage, or `counts`; `unranked` has a
 *   result that the day's ranking does not take yet
 */
export function whereIs({ outcomes }, stages, standing) {
  const standingNow = new Map(outcomes.filter(outcome => !outcome.replacedBy).map(({ stage, passed }) => [stage, passed]));
  const failed = stages.find(stage => standingNow.get(stage) === false);
  if (failed) return { at: failed, state: 'failed' };
  if (standing?.standing === 'counts') return standing.ranked ? { at: 'counts', state: 'counts' } : { at: stages.at(-1), state: 'unranked' };
  const next = stages.find(stage => !standingNow.has(stage)) ?? stages.at(-1);
  return { at: next, state: next === stages.at(-1) ? 'waits' : 'building' };
}
