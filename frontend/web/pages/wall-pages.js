/** Which teams stand on which page of the Wall. */

const LEAST_ROW_REM = 2.45;

/** How many rows the Wall has room for; on a phone the page scrolls and all rows fit. */
export function rowsThatFit(main) {
  if (!isWide()) return Infinity;
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const board = main.querySelector('.board');
  if (!board) return Infinity;
  const style = getComputedStyle(board);
  const furniture = parseFloat(style.getPropertyValue('--above')) + parseFloat(style.getPropertyValue('--axis'));
  return Math.max(1, Math.floor((board.clientHeight / rem - furniture) / LEAST_ROW_REM));
}

/** Wide enough for one line per team; the style sheet asks the same question. */
export const isWide = () => matchMedia('(min-width: 60em) and (min-height: 30em)').matches;

/** Pages of nearly equal length in order; one empty page for no team. */
export function pagesOf(teams, fit) {
  const count = Math.max(1, Math.ceil(teams.length / fit));
  const size = Math.ceil(teams.length / count);
  return Array.from({ length: count }, (_, page) => teams.slice(page * size, (page + 1) * size));
}
