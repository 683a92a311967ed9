/** The Wall: a lab day's leaderboard for a projector, live, to be read from the back of the room. */
import { deviceNow } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html, render } from '../kit/element.js';
import { LET_GO, arrived, toggled } from '../live/hold.js';
import '../live/banner.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { followRoom } from '../live/room.js';
import { leaderNews } from '../wall/announce.js';
import { wallFoot } from '../wall/foot.js';
import { glide } from '../wall/glide.js';
import { wallHead } from '../wall/head.js';
import { joinHint } from '../wall/join.js';
import { leavesOf } from '../wall/leaves.js';
import { NOTHING_NOTED, noted } from '../wall/notes.js';
import { isWide, linesThatFit, rowsThatFit } from '../wall/pages.js';
import { drawPlot } from '../wall/plot.js';
import { stage } from '../wall/stage.js';
import { switchTheme } from '../wall/theme.js';

const LEAF_STAYS_MS = 12_000;

const main = document.getElementById('main');
const labDayId = location.hash.slice(1);
const link = followLeaderboard(labDayId);
const room = followRoom(labDayId);
const speech = leaderNews();
let join = null;
let joinKnownFor = null;
let hold = LET_GO;
let notes = NOTHING_NOTED;
let pageNumber = 0;
let pageTimer = null;
const sizes = new ResizeObserver(() => draw());

function draw() {
  hold = arrived(hold, link.body);
  notes = noted(notes, hold.shown, deviceNow());
  const state = hold.shown;
  const leaves = leavesOf(state, { rows: rowsThatFit(main), lines: linesThatFit(main) });
  pageNumber = (pageNumber + leaves.length) % leaves.length;
  const shown = isWide() ? [leaves[pageNumber]] : leaves;
  document.title = `${state?.title ?? t('page.header.wall')} · Berrywatt`;
  glide(main, () => render(template(state, shown, leaves.length), main));
  const places = shown.find(leaf => leaf.kind === 'places');
  if (places) drawPlot(main, state, places.teams);
  if (isWide()) for (const part of main.children) sizes.observe(part); // type and head may grow after the screen has its size
  askHowToJoin(state);
}

/** The code of the day comes and goes with the entry. */
async function askHowToJoin(state) {
  if (!state || state.entryOpen === joinKnownFor) return;
  joinKnownFor = state.entryOpen;
  join = await joinHint(labDayId);
  draw();
}

function template(state, shown, count) {
  return html`${wallHead(state, link)}
    <bw-banner .room=${room}></bw-banner>
    ${stage(state, shown, { join, moves: notes.moves })}
    ${wallFoot({ hold, news: notes.news, join, pageNumber, pageCount: isWide() ? count : 1, pause, turn, changeTheme })}
    <p class="unseen" role="status">${speech(state)}</p>`;
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
  pageTimer = setInterval(() => hold.held || turn(1), LEAF_STAYS_MS);
}

main.replaceChildren();
link.addEventListener('change', draw);
room.addEventListener('change', () => requestAnimationFrame(draw)); // what the banner takes, the rows give
addEventListener('hashchange', () => location.reload());
sizes.observe(document.body);
stayAWhile();
draw();
