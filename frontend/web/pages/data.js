/** Data: the day's tables to fetch, the whole day as one file, and the way to delete it for good. */
import { serverClock } from '../core/clock.js';
import { day as dateWords } from '../core/format.js';
import { Refused, gather, get } from '../core/http.js';
import { t } from '../core/texts.js';
import { archiveAddress } from '../data/address.js';
import '../data/loggers.js';
import '../data/paper.js';
import { removal } from '../data/removal.js';
import { tables } from '../data/tables.js';
import { html, openPage } from '../kit/kit.js';
import { refusal } from './refusal.js';

const AGAIN_MS = 3_000;

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('data');
header.day = labDayId;
let day;
let resources;
let reader = 'spreadsheet';
let fetchedAt = null;

async function load() {
  draw(html`<h1>${t('page.data.title')}</h1><p class="soft" role="status">${t('page.data.counting')}</p>`);
  try {
    [day, { resources }] = await Promise.all([get(`/api/labdays/${labDayId}`), gather(`/api/labdays/${labDayId}/tables`)]);
    show();
  } catch (error) {
    draw(refusal(error));
    if (!(error instanceof Refused)) setTimeout(load, AGAIN_MS);
  }
}

function show() {
  draw(html`<div class="data">
    <header><h1>${t('page.data.title')}</h1><p class="soft">${day.title} · ${dateWords(day.date)}</p></header>
    <details class="fold card paper"><summary><h2>${t('page.data.paper')}</h2></summary>
      <bw-paper .labDayId=${labDayId} .open=${day.entryOpen} @kept=${recount}></bw-paper></details>
    ${tables(labDayId, resources, reader, choose)}
    <div class="side flow-wide">
      <section class="card flow"><h2>${t('page.data.archive')}</h2>
        <p>${t('page.data.archiveMeans')}</p><p class="soft">${t('page.data.archiveCare')}</p>
        <p><a class="button" href=${archiveAddress(labDayId)} download @click=${fetched}>${t('page.data.archiveFetch')}</a></p></section>
      <section class="card flow"><h2>${t('page.data.loggers')}</h2><bw-loggers .labDayId=${labDayId} .counted=${resources}></bw-loggers></section>
      ${removal(day, resources, { fetchedAt, fetched, gone })}
    </div>
  </div>`);
}

async function recount() {
  ({ resources } = await gather(`/api/labdays/${labDayId}/tables`));
  show();
}

function choose(chosen) {
  reader = chosen;
  show();
}

/** The browser has asked for the archive; where it puts the file is between it and the teacher. */
function fetched() {
  fetchedAt = serverClock.now();
  show();
}

function gone() {
  location.assign('/days.html');
}

addEventListener('hashchange', () => location.reload());
load();
