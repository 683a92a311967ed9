/** Bench: a team's phone. What now, is it safe, how are we doing? */
import { Refused, put } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, keyed, nothing, openPage } from '../kit/kit.js';
import { refusal } from './refusal.js';
import { openOutbox } from '../outbox/index.js';
import { BenchData } from '../bench/bench-data.js';
import { cellView } from '../bench/cell-view.js';
import { overview } from '../bench/overview.js';
import { phoneId, tellPresence } from '../lesson/presence.js';
import { onRoute, route } from '../bench/routes.js';
import { waitingView } from '../bench/waiting-view.js';
import { safetyWatch } from '../safety/watch.js';
import '../bench/outbox-strip.js';

const AGAIN_MS = 3_000;

const { who, header, draw } = await openPage('bench');
if (who.kind === 'team') await openBench();
else draw(html`<div class="flow"><h1>${t('page.bench.title')}</h1><p>${t('page.bench.notJoined')}</p>
  <a class="button" href="/join.html">${t('page.bench.joinNow')}</a></div>`);

async function openBench() {
  const outbox = await openOutbox();
  const data = new BenchData(who, outbox);
  const show = () => showView(data, outbox);
  data.addEventListener('changed', show);
  onRoute(show);
  document.addEventListener('visibilitychange', () => document.hidden || data.refresh());
  await openPatiently(data);
  await import('../bench/forms.js');
  const { followLeaderboard } = await import('../live/leaderboard.js');
  data.follow(followLeaderboard(who.labDayId));
  await followLesson(data, outbox);
}

/** The room tells when others changed something; the teacher sees what this phone still holds. */
async function followLesson(data, outbox) {
  const { followRoom, whenRevised } = await import('../live/room.js');
  await import('../live/banner.js');
  data.room = followRoom(who.labDayId);
  whenRevised(data.room, () => Promise.all([data.refresh(), safetyWatch.refresh()]));
  tellPresence(outbox, { put, every: (ms, task) => setInterval(task, ms), phoneId: phoneId() });
}

/** A phone that comes in on bad Wi-Fi keeps asking; what the server refuses is shown. */
async function openPatiently(data) {
  try {
    await data.open();
  } catch (error) {
    draw(refusal(error));
    if (error instanceof Refused) throw error;
    await new Promise(resolve => setTimeout(resolve, AGAIN_MS));
    await openPatiently(data);
  }
}

function showView(data, outbox) {
  if (!data.catalogue) return;
  Object.assign(header, { whom: data.team?.name, mark: data.team?.mark });
  draw(html`<bw-outbox-strip .outbox=${outbox}></bw-outbox-strip>
    ${data.room ? html`<bw-banner .room=${data.room}></bw-banner>` : nothing}${keyed(location.hash, view(data, outbox))}`);
}

function view(data, outbox) {
  const { view: name, id, part } = route();
  const views = {
    cell: () => cellView(data, outbox, id),
    new: () => html`<bw-register-form .data=${data} .outbox=${outbox} .cellId=${''}></bw-register-form>`,
    sheet: () => data.cell(id) && html`<bw-register-form .data=${data} .outbox=${outbox} .cellId=${id}></bw-register-form>`,
    outcome: () => data.cell(id) && html`<bw-outcome-form .data=${data} .outbox=${outbox} .cellId=${id} .part=${part}></bw-outcome-form>`,
    dark: () => reading(data, outbox, id, 'dark'),
    light: () => reading(data, outbox, id, 'light'),
    toggles: () => data.cell(id) && html`<bw-toggles-form .data=${data} .outbox=${outbox} .cellId=${id} .part=${part}></bw-toggles-form>`,
    work: () => data.cell(id) && html`<bw-work-form .data=${data} .outbox=${outbox} .cellId=${id}></bw-work-form>`,
    sweep: () => data.cell(id) && html`<bw-sweep-form .data=${data} .outbox=${outbox} .cellId=${id} .part=${part}></bw-sweep-form>`,
    heater: () => data.cell(id) && html`<bw-heater-form .data=${data} .outbox=${outbox} .cellId=${id}></bw-heater-form>`,
    waiting: () => waitingView(outbox),
    again: () => again(data, outbox, outbox.entries.find(entry => entry.id === id)),
  };
  return (views[name] ?? (() => overview(data)))() || nothing;
}

function reading(data, outbox, id, kind) {
  return data.cell(id) && html`<bw-reading-form .data=${data} .outbox=${outbox} .cellId=${id} .part=${kind}></bw-reading-form>`;
}

/** A refused entry returns to its form with what was typed and the reason. */
function again(data, outbox, entry) {
  if (!entry || entry.about.kind === 'planned') return waitingView(outbox);
  const { kind, cellId, stage, reading: readingKind } = entry.about;
  if (kind === 'outcome') return html`<bw-outcome-form .data=${data} .outbox=${outbox} .cellId=${cellId} .part=${stage} .entry=${entry}></bw-outcome-form>`;
  if (kind === 'heater') return html`<bw-heater-form .data=${data} .outbox=${outbox} .cellId=${cellId} .entry=${entry}></bw-heater-form>`;
  if (kind === 'event') return html`<bw-work-form .data=${data} .outbox=${outbox} .cellId=${cellId} .entry=${entry}></bw-work-form>`;
  if (kind !== 'reading') return html`<bw-register-form .data=${data} .outbox=${outbox} .cellId=${cellId} .entry=${entry}></bw-register-form>`;
  if (readingKind === 'toggles') return html`<bw-toggles-form .data=${data} .outbox=${outbox} .cellId=${cellId} .part=${entry.body.replaces ?? ''} .entry=${entry}></bw-toggles-form>`;
  return readingKind === 'sweep' ? html`<bw-sweep-form .data=${data} .outbox=${outbox} .cellId=${cellId} .part=${entry.body.replaces ?? ''} .entry=${entry}></bw-sweep-form>`
    : html`<bw-reading-form .data=${data} .outbox=${outbox} .cellId=${cellId} .part=${readingKind} .entry=${entry}></bw-reading-form>`;
}
