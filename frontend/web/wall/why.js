import { has, t } from '../core/texts.js';

/** Which of a team's cells do not count and why, in a few words for those that share a reason; what waits comes first. */
export function whyNot({ cells }) {
  if (cells.length === 0) return t('page.wall.noCell');
  const out = cells.filter(cell => !cell.ranked).sort(waitingFirst);
  if (out.length === 0) return cells.length === 1 ? t('page.wall.oneCounts') : t('page.wall.allCount', { count: cells.length });
  return [...byReason(out)].map(([reason, labels]) => `${labels.join(', ')} ${reason}`).join('; ');
}

function byReason(cells) {
  const labels = new Map();
  for (const cell of cells) {
    const reason = briefly(cell);
    labels.set(reason, [...(labels.get(reason) ?? []), cell.label]);
  }
  return labels;
}

const waitingFirst = (a, b) => Number(a.standing === 'failed') - Number(b.standing === 'failed');

/** The short words for a remark, or for the family it belongs to: `galvanic.darkShare`, then `galvanic`. */
function briefly({ standing, remark: reason }) {
  const name = reason?.key.replace(/^standing\./, '') ?? '';
  const key = [name, name.split('.')[0]].map(each => `page.wall.why.${each}`).find(has);
  return key ? t(key, reason.values) : t(`page.wall.${standing}`);
}
