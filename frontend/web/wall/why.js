import { has, t } from '../core/texts.js';

/** What a line of the Wall holds, and two lines of a phone. */
const MOST = 38;

/**
 * Which of a team's cells do not count and why, in a few words for those that share a reason; what waits comes first. Where
 * the words grow too long, first what broke and then what waits is said in one word: a leaf of its own tells all in full.
 */
export function whyNot({ cells }) {
  if (cells.length === 0) return t('page.wall.noCell');
  const out = cells.filter(cell => !cell.ranked).sort(waitingFirst);
  if (out.length === 0) return cells.length === 1 ? t('page.wall.oneCounts') : t('page.wall.allCount', { count: cells.length });
  const ways = [briefly, cell => (isFailed(cell) ? inAWord(cell) : briefly(cell)), inAWord].map(words => byReason(out, words));
  return ways.find(words => words.length <= MOST) ?? ways.at(-1);
}

function byReason(cells, words) {
  const labels = new Map();
  for (const cell of cells) {
    const reason = words(cell);
    labels.set(reason, [...(labels.get(reason) ?? []), cell.label]);
  }
  return [...labels].map(([reason, those]) => `${those.join(', ')} ${reason}`).join('; ');
}

const isFailed = ({ standing }) => standing === 'failed';

const waitingFirst = (a, b) => Number(isFailed(a)) - Number(isFailed(b));

const inAWord = cell => t(isFailed(cell) ? 'page.wall.failed' : 'page.wall.open');

/** The short words for a remark, or for the family it belongs to: `galvanic.darkShare`, then `galvanic`. */
function briefly(cell) {
  const { remark: reason } = cell;
  const name = reason?.key.replace(/^standing\./, '') ?? '';
  const key = [name, name.split('.')[0]].map(each => `page.wall.why.${each}`).find(has);
  return key ? t(key, reason.values) : inAWord(cell);
}
