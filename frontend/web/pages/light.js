/** Light: the stations of the day, what was read at each and when, and a place to read it again. */
import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage, repeat } from '../kit/kit.js';
import './light-station-form.js';
import { stationCard } from './light-station.js';
import { drawStationDrift } from './light-drift.js';
import { refusal } from './refusal.js';

const AGES_MS = 30_000;

const labDayId = location.hash.slice(1);
const { who, header, draw } = await openPage('light');
header.day = labDayId;
const mayWrite = who.kind === 'teacher';
let catalogue = null;
let stations = null;
let adding = false;

async function load() {
  try {
    catalogue ??= await get('/api/catalogue');
    stations = await get(`/api/labdays/${labDayId}/stations`);
    show();
  } catch (error) {
    if (!stations) draw(refusal(error));
  }
}

function show() {
  const formShown = mayWrite && (adding || stations.length === 0);
  draw(html`<div class="light flow-wide">
    <div class="apart"><div><h1>${t('page.light.title')}</h1><p class="soft">${t('page.light.lead')}</p></div>
      ${mayWrite && !formShown ? html`<button class="button" @click=${add}><bw-icon name="add"></bw-icon>${t('page.light.add')}</button>` : nothing}</div>
    ${formShown ? newStation() : nothing}
    ${stations.length === 0 && !mayWrite ? html`<p>${t('page.light.none')}</p>` : nothing}
    <div class="stations">${repeat(stations, station => station.id, station => stationCard(station, { catalogue, mayWrite, load }))}</div>
  </div>`);
  for (const station of stations) drawStationDrift(station);
}

function newStation() {
  return html`<section class="card flow narrow"><h2>${t('page.light.new')}</h2>
    <bw-station-form .labDayId=${labDayId} .catalogue=${catalogue} @saved=${added}></bw-station-form>
    ${stations.length > 0 ? html`<button class="button plain" @click=${cancel}>${t('page.days.cancel')}</button>` : nothing}</section>`;
}

function add() {
  adding = true;
  show();
  setTimeout(() => document.querySelector('bw-station-form bw-field').focus());
}

function cancel() {
  adding = false;
  show();
}

function added() {
  adding = false;
  load();
}

addEventListener('hashchange', () => location.reload());
setInterval(load, AGES_MS);
load();
