/** The boards beside the places: who leads in something else than the day's rule. Pure; ties keep the order of places. */

const SHOWN = 4;

/** Nobody can read again what was left of an ageing cell, or which share works. */
const READ_ONCE = ['retention', 'yield'];

/** @returns {{key: string, more: number, rows: {team: object, figure: object}[]}[]} in the order of the screen */
export function honours(teams, metric) {
  return [
    ...(READ_ONCE.includes(metric) ? [] : [board('verified', teams, bestVerified, (a, b) => b.ranked.value - a.ranked.value)]),
    board('yield', teams, working, (a, b) => b.share - a.share || b.working - a.working),
    board('alike', teams, alike, (a, b) => a.times - b.times),
    board('retention', teams, kept, (a, b) => b.share - a.share),
  ];
}

function board(key, teams, figureOf, order) {
  const rows = teams.map(team => ({ team, figure: figureOf(team) })).filter(({ figure }) => figure)
    .sort((a, b) => order(a.figure, b.figure));
  return { key, rows: rows.slice(0, SHOWN), more: Math.max(0, rows.length - SHOWN) };
}

function bestVerified({ side, cells }) {
  const best = cells.find(cell => cell.cellId === side?.bestVerifiedCell);
  return best?.figure ? { label: best.label, ranked: best.figure } : null;
}

function working({ side }) {
  if (!side?.declared || !side.working) return null;
  return { working: side.working, declared: side.declared, share: side.working / side.declared };
}

const alike = ({ side }) => (side?.geometricDeviation == null ? null : { times: side.geometricDeviation });

function kept({ side, cells }) {
  if (!side?.kept) return null;
  return { ...side.kept, label: cells.find(cell => cell.cellId === side.kept.cellId)?.label ?? '' };
}
