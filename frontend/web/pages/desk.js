/** The Desk: a teacher's view of the day. Who needs help next, where every cell stands, and who may still enter. */
import { exchange, get, put } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { announce } from '../desk/announce.js';
import { heater } from '../desk/heater.js';
import { timers } from '../desk/timers.js';
import '../live/banner.js';
import { followLeaderboard } from '../live/leaderboard.js';
import { incidents } from '../desk/incidents.js';
import { signOffs } from '../desk/sign-offs.js';
import { followRoom, whenRevised } from '../live/room.js';
import './day-form.js';
import { conditions } from './day-words.js';
import { showCode } from './desk-code.js';
import { stageTable } from './desk-stages.js';
import { teamShelf } from './desk-teams.js';
import { waitingList } from './desk-waiting.js';
import { refusal, sentenceOf } from './refusal.js';

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('desk');
header.day = labDayId;
const link = followLeaderboard(labDayId);
const room = followRoom(labDayId);
let desk = null;
let problem = null;

async function load() {
  try {
    const [day, teams, cells, lesson, catalogue] = await Promise.all([
      exchange('GET', `/api/labdays/${labDayId}`),
      get(`/api/labdays/${labDayId}/teams`),
      get(`/api/labdays/${labDayId}/cells`),
      get(`/api/labdays/${labDayId}/lesson`),
      desk?.catalogue ?? get('/api/catalogue'),
    ]);
    desk = { day: day.body, etag: day.etag, teams, cells, lesson, catalogue, room };
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
  const standings = new Map((link.body?.teams ?? []).flatMap(team => team.cells).map(cell => [cell.cellId, cell]));
  draw(html`<div class="desk flow-wide">
    ${problem ? html`<bw-notice tone="unusual" .text=${sentenceOf(problem)}></bw-notice>` : nothing}
    <bw-banner .room=${room}></bw-banner>
    ${heading(desk.day)}
    ${waitingList(desk, standings)}
    ${stageTable(desk, standings)}
    ${heater(desk, { reload: load })}
    <div class="pair">${timers(desk, { reload: load })}${announce(desk, { reload: load })}</div>
    ${signOffs(desk)}
    ${incidents(desk)}
    ${teamShelf(desk, { reload: load })}
    ${settings()}
  </div>`);
}

function heading(day) {
  return html`<header class="apart">
    <div><h1>${day.title}</h1>
      <p class="soft">${t(`catalogue.rule.${day.rule}`)} · ${conditions(day)}</p></div>
    <div class="beside">
      <span class="tag ${day.entryOpen ? 'fine' : ''}">${t(day.entryOpen ? 'page.days.open' : 'page.days.closed')}</span>
      <button class="button quiet" @click=${toggleEntry}>${t(day.entryOpen ? 'page.desk.close' : 'page.desk.open')}</button>
      ${day.teamsCreateThemselves ? html`<button class="button" @click=${projectDay}>${t('page.desk.showDay')}</button>` : nothing}
    </div>
  </header>`;
}

function settings() {
  return html`<details class="fold"><summary>${t('page.desk.edit')}</summary>
    <div class="narrow"><bw-day-form .key=${labDayId} .day=${desk.day} .etag=${desk.etag} .catalogue=${desk.catalogue}
      .label=${t('page.desk.save')} @saved=${load}></bw-day-form></div></details>`;
}

async function toggleEntry() {
  try {
    await put(`/api/labdays/${labDayId}/entry`, { open: !desk.day.entryOpen });
    await load();
  } catch (error) {
    problem = error;
    show();
  }
}

function projectDay() {
  showCode({ title: desk.day.title, code: desk.day.code, picture: `/api/labdays/${labDayId}/link.svg` });
}

link.addEventListener('change', show);
whenRevised(room, load);
addEventListener('hashchange', () => location.reload());
load();
