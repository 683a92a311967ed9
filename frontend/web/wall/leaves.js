/** What the Wall turns through: the places, the boards beside them, and the cells that are not ranked yet. */
import { pagesOf } from './pages.js';

/**
 * @param {?object} state the leaderboard
 * @param {{rows: number, lines: number}} fit how many teams and how many waiting cells one screen holds
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

/** Finished cells without a result that counts: what is being built needs no word on the Wall. */
export function waitingCells(teams) {
  return teams.flatMap(team => team.cells
    .filter(({ ranked, standing, remark }) => !ranked && standing !== 'failed' && remark && remark.key !== 'standing.building')
    .map(cell => ({ ...cell, team })));
}

const leaf = (kind, { teams = [], cells = [] }) => ({ kind, teams, cells });
