/** Which teams stand on which page of the Wall. */

const LEAST_ROW_REM = 2.45;
const WAITING_TITLE_REM = 2;
const WAITING_ROW_REM = 3;

/** How many rows the Wall has room for; on a phone the page scrolls and all rows fit. */
export function rowsThatFit(main) {
  if (!isWide()) return Infinity;
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const stage = main.querySelector('.stage');
  if (!stage) return Infinity;
  const style = getComputedStyle(stage);
  const furniture = parseFloat(style.getPropertyValue('--above')) + parseFloat(style.getPropertyValue('--axis'));
  return Math.max(1, Math.floor((stage.clientHeight / rem - furniture) / LEAST_ROW_REM));
}

/** How many cells that are not ranked yet the Wall has room for, two lines each. */
export function linesThatFit(main) {
  const stage = main.querySelector('.stage');
  if (!isWide() || !stage) return Infinity;
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return Math.max(1, Math.floor((stage.clientHeight / rem - WAITING_TITLE_REM) / WAITING_ROW_REM));
}

/** Wide enough for one line per team; the style sheet asks the same question. */
export const isWide = () => matchMedia('(min-width: 60em) and (min-height: 30em)').matches;

/** Pages of nearly equal length in order; one empty page for no team. */
export function pagesOf(teams, fit) {
  const count = Math.max(1, Math.ceil(teams.length / fit));
  const size = Math.ceil(teams.length / count);
  return Array.from({ length: count }, (_, page) => teams.slice(page * size, (page + 1) * size));
}
