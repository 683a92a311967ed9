/** What the Wall turns through: the places, the boards beside them, and the cells that wait or broke. */
import { pagesOf } from './pages.js';

/**
 * @param {?object} state the leaderboard
 * @param {{rows: number, lines: number}} fit how many teams and how many lines about cells one screen holds
 * @returns {{kind: 'places' | 'beside' | 'waiting', teams: object[], cells: object[]}[]} at least one leaf
 */
export function leavesOf(state, { rows, lines }) {
  const teams = state?.teams ?? [];
  const places = pagesOf(teams, rows).map(page => leaf('places', { teams: page }));
  const boards = teams.some(team => team.place != null) ? [leaf('beside', { teams })] : [];
  const waiting = waitingCells(teams);
  const waits = waiting.length === 0 ? [] : pagesOf(waiting, lines).map(page => leaf('waiting', { cells: page }));
  return [...places, ...boards, ...waits];
}

/**
 * Finished cells without a result that counts, then those that broke: {labels, team, remark} for those of a team with one
 * reason. What is being built needs no word on the Wall.
 */
export function waitingCells(teams) {
  const all = teams.flatMap(team => byReason(team.cells.filter(isTold)).map(cells => ({
    labels: cells.map(({ label }) => label), team, remark: cells[0].remark, failed: isFailed(cells[0]),
  })));
  return [...all.filter(({ failed }) => !failed), ...all.filter(({ failed }) => failed)];
}

const isTold = ({ ranked, remark }) => !ranked && remark && remark.key !== 'standing.building';

const isFailed = ({ standing }) => standing === 'failed';

function byReason(cells) {
  const groups = new Map();
  for (const cell of cells) {
    const reason = JSON.stringify(cell.remark);
    groups.set(reason, [...(groups.get(reason) ?? []), cell]);
  }
  return [...groups.values()];
}

const leaf = (kind, { teams = [], cells = [] }) => ({ kind, teams, cells });
