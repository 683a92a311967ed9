/** Plan: before the day. What to compare, who builds what, what that can tell, what to prepare. */
import { day as dateWords } from '../core/format.js';
import { Refused, exchange, get } from '../core/http.js';
import { newId } from '../core/ids.js';
import { draftOf, dropDraft, keepDraft } from '../core/drafts.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import { cards } from '../plan/cards.js';
import { firstDraft } from '../plan/draft.js';
import { hazardSheet } from '../plan/hazard-sheet.js';
import { needs } from '../plan/needs.js';
import { says } from '../plan/says.js';
import '../plan/settings-form.js';
import { table } from '../plan/table.js';
import { timetable } from '../plan/timetable.js';
import { refusal, sentenceOf } from './refusal.js';

const TRIES = 4;

const labDayId = location.hash.slice(1);
const { header, draw } = await openPage('plan');
header.day = labDayId;
const at = `/api/labdays/${labDayId}`;
const kept = `plan.${labDayId}`;
let [day, teams, catalogue, plan, etag, draft, trouble, busy] = [];

async function load() {
  try {
    const [dayAnswer, teamsAnswer, catalogueAnswer, planned] = await Promise.all([get(at), get(`${at}/teams`), get('/api/catalogue'), exchange('GET', `${at}/plan`)]);
    [day, teams, catalogue] = [dayAnswer, teamsAnswer, catalogueAnswer];
    take(planned);
    draft = draftOf(kept, plan.settings ?? firstDraft(day, teams));
    show();
  } catch (error) {
    draw(refusal(error));
  }
}

function take(answer) {
  plan = answer.body;
  etag = answer.etag;
}

function show() {
  document.title = `${day.title} · ${t('page.header.plan')} · Berrywatt`;
  draw(html`<div class="plan">
    <header class="apart"><div><h1>${t('page.plan.title')}</h1><p class="soft">${day.title} · ${dateWords(day.date)}</p></div>
      ${plan.settings ? html`<div class="beside no-print">${['overview', 'cards', 'hazards'].map(what => html`<button class="button quiet" @click=${() => print(what)}>${t(`page.plan.print.${what}`)}</button>`)}</div>` : nothing}</header>
    <div class="board">
      <aside class="card no-print"><bw-plan-form .draft=${draft} .catalogue=${catalogue} .saved=${plan.version > 0} .busy=${busy} .trouble=${trouble}
        .byHand=${plan.cells.some(({ byHand }) => byHand)} @changed=${changed} @deal=${deal}></bw-plan-form></aside>
      <div class="outcome flow-wide">${plan.settings ? outcome() : html`<div class="flow empty"><p class="lead">${t('page.plan.none')}</p><p class="soft">${t('page.plan.noneMore')}</p></div>`}</div>
    </div>
    ${plan.settings ? cards(plan, { day, teams, catalogue }) : nothing}
  </div>`);
}

function outcome() {
  return html`${plan.settings.cellsPerTeam > day.cellsPerTeam ? html`<bw-notice tone="unusual" .text=${t('page.plan.moreThanDay', { planned: plan.settings.cellsPerTeam, day: day.cellsPerTeam })}></bw-notice>` : nothing}
    ${teams.length > plan.settings.teams ? html`<bw-notice tone="unusual" .text=${t('page.plan.moreTeams', { teams: teams.length, planned: plan.settings.teams })}></bw-notice>` : nothing}
    <div class="print-overview flow-wide">${says(plan, catalogue)}${table(plan, catalogue, change)}${timetable(plan)}${needs(plan, catalogue)}</div>
    ${hazardSheet(plan, day)}`;
}

function changed({ detail }) {
  draft = detail;
  trouble = null;
  keepDraft(kept, draft);
  show();
}

/** A new draw of chance; what was changed by hand stays in the earlier version. */
async function deal() {
  await send(`${at}/plan/versions/${newId()}`, { ...draft, seed: null });
  if (!trouble) toSays();
}

function toSays() {
  const heading = document.getElementById('says');
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
  heading.scrollIntoView({ block: 'start' });
}

const change = body => send(`${at}/plan/changes/${newId()}`, body);

async function send(path, body) {
  [busy, trouble] = [true, null];
  show();
  try {
    take(await patiently(() => exchange('PUT', path, { body, headers: { 'If-Match': etag } })));
    if (path.includes('/versions/')) dropDraft(kept);
    draft = draftOf(kept, plan.settings);
  } catch (error) {
    trouble = sentenceOf(error);
  }
  busy = false;
  show();
}

/** A search may take longer than a page waits for an answer; the same id sent again is answered by the same plan. */
async function patiently(ask) {
  for (let left = TRIES; ; left--) {
    try {
      return await ask();
    } catch (error) {
      if (error instanceof Refused || left === 1) throw error;
    }
  }
}

/** Prints one of the three: the page's own style decides what is on paper. */
function print(what) {
  document.body.dataset.print = what;
  globalThis.print();
}

addEventListener('hashchange', () => location.reload());
load();
