/** Light: the stations of the day, what was read at each and when, and a place to read it again. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage, repeat } from '../kit/kit.js';
import { controlCell } from '../light/control.js';
import { drawStationDrift } from '../light/drift.js';
import { stationCard } from '../light/station-card.js';
import '../light/station-form.js';
import { followRoom, whenRevised } from '../live/room.js';
import { refusal } from './refusal.js';

const AGES_MS = 30_000;

const [labDayId, part] = location.hash.slice(1).split('/');
const { who, header, draw } = await openPage('light');
header.day = labDayId;
const mayWrite = who.kind === 'teacher';
const page = {
  labDayId, mayWrite, catalogue: null, day: null, stations: null, control: null, cells: [], uses: new Map(), changing: null, adding: false, load, change, changed, leave,
  get mayRead() { return mayWrite && this.day.entryOpen; },
  get mayCorrect() { return mayWrite && !this.day.resultsFinal; },
};

let led = false;

async function load() {
  try {
    page.catalogue ??= await get('/api/catalogue');
    const of = name => get(`/api/labdays/${labDayId}${name}`);
    [page.day, page.stations, page.control, page.cells] = await Promise.all([of(''), of('/stations'), of('/control-cell'), of('/cells')]);
    if (mayWrite) page.uses = await usesOf(page.stations);
    show();
    leadToPart();
  } catch (error) {
    if (!page.stations) draw(refusal(error));
  }
}

/** Once, where the address asks for the control cell. */
function leadToPart() {
  if (part !== 'control' || led) return;
  led = true;
  document.querySelector('.control')?.scrollIntoView();
  document.getElementById('control-cell')?.focus();
}

/** The cells that lean on each reading. */
async function usesOf(stations) {
  const answers = await Promise.all(stations.map(({ id }) => get(`/api/stations/${id}/cells`)));
  return new Map(answers.flat().map(({ irradianceId, cells }) => [irradianceId, cells]));
}

function show() {
  const { stations, adding, day } = page;
  const formShown = mayWrite && (adding || stations.length === 0);
  draw(html`<div class="light flow-wide">
    <div class="apart"><div><h1>${t('page.light.title')}</h1><p class="soft">${t('page.light.lead')}</p></div>
      ${page.mayCorrect && !formShown ? html`<button class="button quiet" @click=${add}><bw-icon name="add"></bw-icon>${t('page.light.add')}</button>` : nothing}</div>
    ${mayWrite && !day.entryOpen ? html`<bw-notice .text=${t(day.resultsFinal ? 'page.light.final' : 'page.light.closed')}></bw-notice>` : nothing}
    ${formShown ? newStation() : nothing}
    ${stations.length === 0 && !mayWrite ? html`<p>${t('page.light.none')}</p>` : nothing}
    <div class="stations">${repeat(stations, station => station.id, station => stationCard(station, page))}</div>
    ${stations.length > 0 ? controlCell(page) : nothing}
  </div>`);
  for (const station of stations) drawStationDrift(station);
}

function newStation() {
  const first = page.stations.length === 0;
  return html`<section class="card flow narrow"><h2>${t(first ? 'page.light.first' : 'page.light.new')}</h2>
    ${first ? html`<p>${t('page.light.firstLead')}</p>` : nothing}
    <bw-station-form .labDayId=${labDayId} .catalogue=${page.catalogue} @saved=${added}></bw-station-form>
    ${first ? nothing : html`<button class="button plain" @click=${cancel}>${t('page.days.cancel')}</button>`}</section>`;
}

function add() {
  page.adding = true;
  show();
  setTimeout(() => document.querySelector('bw-station-form bw-field').focus());
}

function cancel() {
  page.adding = false;
  show();
}

function added() {
  page.adding = false;
  load();
}

/** @param key what is changed, `settings.ID`, `correct.ID`, `aside.ID` or `spectrum.ID` */
function change(key) {
  page.changing = key;
  show();
}

async function changed() {
  const done = page.changing;
  page.changing = null;
  await load();
  returnTo(done);
}

function leave() {
  const left = page.changing;
  page.changing = null;
  show();
  returnTo(left);
}

/** Puts the focus back to where the change began. */
const returnTo = key => setTimeout(() => document.querySelector(`[data-change="${key}"]`)?.focus());

addEventListener('hashchange', () => location.reload());
whenRevised(followRoom(labDayId), load);
setInterval(load, AGES_MS);
load();
