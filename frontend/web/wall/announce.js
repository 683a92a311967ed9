import { deviceNow } from '../core/clock.js';
import { t } from '../core/texts.js';

const QUIET_MS = 30_000;

/** Answers a function from state to the sentence a screen reader may hear: a new leader, at most every half minute. */
export function leaderNews(now = deviceNow) {
  let said = '';
  let saidAt = -Infinity;
  return state => {
    const leader = state?.teams.find(team => team.place === 1);
    const sentence = leader ? t('page.wall.leader', { name: leader.name }) : '';
    if (sentence === said || now() - saidAt < QUIET_MS) return said;
    saidAt = now();
    said = sentence;
    return said;
  };
}
