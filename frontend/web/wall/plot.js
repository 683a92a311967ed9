import { drawIntervals } from '../charts/intervals.js';
import { shown } from '../core/ranked.js';
import { t } from '../core/texts.js';
import { isWide } from './pages.js';

const TALLEST_ROW_REM = 5.2;
const drawn = new WeakMap();

/** Draws the teams of one page over the rows of the table in `main`, which takes its row height from here. */
export function drawPlot(main, state, teams) {
  const board = main.querySelector('.board');
  const canvas = board?.querySelector('canvas');
  if (!canvas) return;
  const axisHeight = layOut(board, teams.length);
  if (!drawn.has(canvas)) drawn.set(canvas, drawIntervals(canvas));
  drawn.get(canvas).show({
    metric: state.metric,
    dots: teams.map(dotOf),
    rows: teams.length,
    line: isWide() ? 0.5 : 0.82,
    grid: isWide(),
    axisHeight,
    sentence: t('page.wall.picture', { count: teams.filter(team => team.place != null).length, title: state.title, metric: `catalogue.metric.${state.metric}` }),
  });
}

/** Gives every row the same height and answers the height of the axis below them, in pixels. */
function layOut(board, rows) {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const [above, axis] = ['--above', '--axis'].map(name => parseFloat(getComputedStyle(board).getPropertyValue(name)) * rem);
  const fitting = Math.min(TALLEST_ROW_REM * rem, (board.clientHeight - above - axis) / rows);
  board.style.setProperty('--rows', rows);
  for (const tie of board.querySelectorAll('.tie')) tie.style.setProperty('--group', tie.dataset.group);
  if (isWide()) board.style.setProperty('--row', `${Math.floor(fitting)}px`);
  else board.style.removeProperty('--row');
  return axis;
}

function dotOf({ teamId, mark, figure, cells }, row) {
  const values = cells.filter(cell => cell.ranked || cell.standing === 'failed').map(cellValue);
  if (!figure) return { key: teamId, mark: null, row, value: 0, low: null, high: null, cells: values };
  const { value, low, high } = shown(figure);
  return { key: teamId, mark, row, value, low, high, cells: values };
}

const cellValue = ({ standing, figure }) => (standing === 'failed' ? null : shown(figure).value);
