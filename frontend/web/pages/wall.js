/** The Wall: a lab day's leaderboard for a projector, live, to be read from the back of the room. */
import { t } from '../core/texts.js';
import { html, render } from '../kit/element.js';
import { LET_GO, arrived, toggled } from '../live/hold.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { leaderNews } from './wall-announce.js';
import { wallBoard } from './wall-board.js';
import { wallFoot } from './wall-foot.js';
import { glide } from './wall-glide.js';
import { wallHead } from './wall-head.js';
import { joinHint } from './wall-join.js';
import { pagesOf, rowsThatFit } from './wall-pages.js';
import { drawPlot } from './wall-plot.js';
import { switchTheme } from './wall-theme.js';

const PAGE_STAYS_MS = 12_000;

const main = document.getElementById('main');
const labDayId = location.hash.slice(1);
const link = followLeaderboard(labDayId);
const news = leaderNews();
let join = null;
let joinKnownFor = null;
let hold = LET_GO;
let pageNumber = 0;
let pageTimer = null;

function draw() {
  hold = arrived(hold, link.body);
  const state = hold.shown;
  const pages = pagesOf(state?.teams ?? [], rowsThatFit(main));
  pageNumber = (pageNumber + pages.length) % pages.length;
  document.title = `${state?.title ?? t('page.header.wall')} · Berrywatt`;
  glide(main, () => render(template(state, pages), main));
  drawPlot(main, state, pages[pageNumber]);
  askHowToJoin(state);
}

/** The code of the day comes and goes with the entry. */
async function askHowToJoin(state) {
  if (!state || state.entryOpen === joinKnownFor) return;
  joinKnownFor = state.entryOpen;
  join = await joinHint(labDayId);
  draw();
}

function template(state, pages) {
  return html`${wallHead(state, link)}
    ${wallBoard(state, pages[pageNumber], join)}
    ${wallFoot({ hold, join, pageNumber, pageCount: pages.length, pause, turn, changeTheme })}
    <p class="unseen" role="status">${news(state)}</p>`;
}

function pause() {
  hold = toggled(hold);
  draw();
}

function changeTheme() {
  switchTheme();
  draw();
}

function turn(step) {
  pageNumber += step;
  draw();
  stayAWhile();
}

function stayAWhile() {
  clearInterval(pageTimer);
  pageTimer = setInterval(() => hold.held || turn(1), PAGE_STAYS_MS);
}

main.replaceChildren();
link.addEventListener('change', draw);
addEventListener('hashchange', () => location.reload());
new ResizeObserver(draw).observe(document.body);
stayAWhile();
draw();
