/** The Desk: a teacher's view of the day. Who needs help next, where every cell stands, and what to do about it. */
import { exchange, get } from '../core/http.js';
import { ruleWords } from '../core/rule.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import '../live/banner.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { followRoom, whenRevised } from '../live/room.js';
import { announce } from '../desk/announce.js';
import '../desk/attention.js';
import '../desk/cell-drawer.js';
import { showCode } from '../desk/code.js';
import { dayPanel } from '../desk/day-panel.js';
import { stateTag } from '../desk/day-state.js';
import { heater } from '../desk/heater.js';
import { incidents } from '../desk/incidents.js';
import { listen } from '../desk/keys.js';
import '../desk/panels.js';
import { planPanel } from '../desk/plan.js';
import { readRoute, toCell, toDay, toPanel } from '../desk/route.js';
import { signOffs } from '../desk/sign-offs.js';
import { stageTable } from '../desk/stages.js';
import { project, teamShelf } from '../desk/teams.js';
import { timers } from '../desk/timers.js';
import { conditions } from './day-words.js';
import { safetyWatch } from '../safety/watch.js';
import { refusal, sentenceOf } from './refusal.js';

/** What only time changes, such as a light that grows old, is seen this soon. */
const LOOK_AGAIN_MS = 20_000;

const labDayId = readRoute(location.hash).day;
const { header, draw } = await openPage('desk');
header.day = labDayId;
const link = followLeaderboard(labDayId);
const room = followRoom(labDayId);
let desk = null;
let problem = null;
let chosenPanel = 'signOffs';

async function load() {
  try {
    const [day, teams, cells, stations, lesson, attention, catalogue] = await Promise.all([
      exchange('GET', `/api/labdays/${labDayId}`),
      get(`/api/labdays/${labDayId}/teams`),
      get(`/api/labdays/${labDayId}/cells`),
      get(`/api/labdays/${labDayId}/stations`),
      get(`/api/labdays/${labDayId}/lesson`),
      get(`/api/labdays/${labDayId}/desk`),
      desk?.catalogue ?? get('/api/catalogue'),
    ]);
    desk = { day: day.body, etag: day.etag, teams, cells, stations, lesson, attention, catalogue, room };
    problem = null;
  } catch (error) {
    problem = error;
  }
  show();
}

async function lookAgain() {
  if (!desk || document.hidden) return;
  try {
    desk = { ...desk, attention: await get(`/api/labdays/${labDayId}/desk`) };
    problem = null;
  } catch (error) {
    problem = error;
  }
  show();
}

function show() {
  if (!desk) {
    if (problem) draw(refusal(problem));
    return;
  }
  document.title = `${desk.day.title} · ${t('page.header.desk')} · Berrywatt`;
  desk.standings = new Map((link.body?.teams ?? []).flatMap(team => team.cells).map(cell => [cell.cellId, cell]));
  const { kind, id } = readRoute(location.hash);
  draw(html`<div class="desk">
    ${problem ? html`<bw-notice tone="unusual" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    <bw-banner .room=${room}></bw-banner>
    ${heading(desk.day)}
    <div class="floor">
      <bw-attention .desk=${desk} .act=${act} @putoff=${event => { desk = { ...desk, attention: event.detail }; show(); }}></bw-attention>
      <div class="side"><div class="room">${stageTable(desk)}</div>
        <bw-panels class="panels" .panels=${panels()} .chosen=${kind === 'panel' ? id : chosenPanel} @chosen=${event => choose(event.detail)}></bw-panels></div>
      <bw-cell-drawer .desk=${desk} .cellId=${kind === 'cell' ? id : null} @closed=${closeDrawer} @changed=${load}></bw-cell-drawer>
    </div>
  </div>`);
}

function heading(day) {
  return html`<header class="apart">
    <div><h1>${day.title}</h1>
      <p class="soft small">${ruleWords(day.rule)} · ${conditions(day)}</p></div>
    <div class="beside">
      <a href=${toPanel(labDayId, 'day')} class="state">${stateTag(day)}</a>
      ${day.teamsCreateThemselves ? html`<button class="button quiet" @click=${projectDay}>${t('page.desk.showDay')}</button>` : nothing}
    </div>
  </header>`;
}

function panels() {
  return [
    { key: 'signOffs', draw: () => signOffs(desk) },
    { key: 'heater', draw: () => heater(desk, { reload: load }) },
    { key: 'timers', draw: () => timers(desk, { reload: load }) },
    { key: 'announce', draw: () => announce(desk, { reload: load }) },
    { key: 'plan', draw: () => planPanel(desk) },
    { key: 'teams', draw: () => teamShelf(desk, { reload: load }) },
    { key: 'incidents', draw: () => incidents(desk) },
    { key: 'day', draw: () => dayPanel(desk, { reload: load }) },
  ];
}

/** The one next step of each kind of matter. */
const ACTS = {
  openCell: ({ cellId }) => location.assign(toCell(labDayId, cellId)),
  openStation: () => location.assign(`/light.html#${labDayId}`),
  openControl: () => location.assign(`/light.html#${labDayId}/control`),
  openTeam: ({ teamId }) => project(desk.teams.find(({ id }) => id === teamId)),
  closeEntry: () => choose('day'),
  openData: () => location.assign(`/data.html#${labDayId}`),
  signOff: () => choose('signOffs'),
  openHeater: () => choose('heater'),
  openTeams: () => choose('teams'),
  openIncidents: () => choose('incidents'),
};

const act = item => ACTS[item.action](item);

function choose(key) {
  chosenPanel = key;
  location.replace(toPanel(labDayId, key));
  show();
}

function closeDrawer() {
  const { id } = readRoute(location.hash);
  location.replace(toDay(labDayId));
  document.querySelector(`.desk a.chip[href$="${id}"]`)?.focus();
}

function projectDay() {
  showCode({ title: desk.day.title, code: desk.day.code, picture: `/api/labdays/${labDayId}/link.svg` });
}

const attention = () => document.querySelector('bw-attention');

listen({
  n: () => attention().querySelector('.matter .next, summary')?.focus(),
  j: () => attention().step(1),
  k: () => attention().step(-1),
  c: () => document.querySelector('.desk a.chip')?.focus(),
  p: () => document.querySelector('.desk [role="tab"][aria-selected="true"]').focus(),
});

link.addEventListener('change', show);
whenRevised(room, () => Promise.all([load(), safetyWatch.refresh()]));
addEventListener('hashchange', () => (readRoute(location.hash).day === labDayId ? show() : location.reload()));
setInterval(lookAgain, LOOK_AGAIN_MS);
load();
