import { has, remark, t } from '../core/texts.js';

/** Which of a team's cells do not count and why, in a few words each; the ones that wait come first. */
export function whyNot({ cells }) {
  if (cells.length === 0) return t('page.wall.noCell');
  const out = cells.filter(cell => cell.standing !== 'counts').sort(waitingFirst);
  if (out.length === 0) return t('page.wall.allCount', { count: cells.length });
  return out.map(cell => `${cell.label} ${briefly(cell)}`).join(', ');
}

const waitingFirst = (a, b) => Number(a.standing === 'failed') - Number(b.standing === 'failed');

function briefly({ standing, remark: reason }) {
  const brief = reason && `page.wall.why.${reason.key.replace(/^standing\./, '')}`;
  if (brief && has(brief)) return t(brief, reason.values);
  return reason && has(reason.key) && standing === 'counts' ? remark(reason) : t(`page.wall.${standing}`);
}
