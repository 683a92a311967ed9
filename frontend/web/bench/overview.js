/** The bench at a glance: what now, is it safe, how are we doing? */
import { powerDensityTexts } from '../core/format.js';
import { rankedTexts } from '../core/ranked.js';
import { remark, t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { slotTag } from '../lesson/slot.js';
import { teamTimers } from '../lesson/team-timers.js';
import { closedNotice } from './closed.js';
import { nextStep, stagesOf, statesByStage } from './progress.js';
import { to } from './routes.js';
import { comeBackAt, endOf, settledFrom } from './timers.js';
import { place } from './words.js';

export function overview(data) {
  return html`<div class="bench">
    <section class="how flow" aria-labelledby="how">${howAreWeDoing(data)}</section>
    <section class="flow" aria-labelledby="cells">
      <h2 id="cells">${t('page.bench.cells')}</h2>
      ${data.cells.length ? nothing : html`<p class="soft">${t('page.bench.noCells')}</p>`}
      ${teamTimers(data, null)}
      <ul class="bare slides">${data.cells.map(cell => html`<li>${slide(cell, data)}</li>`)}</ul>
      ${register(data)}
    </section>
    <section class="more flow">${anotherPhone(data.team)}
      <p class="soft small">${t('page.bench.help')}</p></section>
  </div>`;
}

function howAreWeDoing(data) {
  const standing = data.standing;
  return html`<h1 id="how">${data.team?.name ?? t('page.bench.title')}</h1>
    ${standing?.place ? placed(standing, data) : data.leaderboard ? html`<p class="soft">${t('page.bench.noPlace')}</p>` : nothing}
    ${whatMoves(standing)}
    ${closedNotice(data)}`;
}

function placed(standing, { leaderboard }) {
  const { place: own, placeLow, placeHigh, figure } = standing;
  const teams = leaderboard.teams.length;
  return html`<p class="figure">${place(own)} <span class="unit">${t('page.bench.ofTeams', { teams })}</span></p>
    ${placeLow !== placeHigh ? html`<p>${t('page.bench.placeRange', { low: place(placeLow), high: place(placeHigh) })}</p>` : nothing}
    ${figure ? html`<p class="soft">${t(figure.high > 0 ? 'page.bench.teamFigure' : 'page.bench.teamNothing', rankedTexts(figure))}</p>` : nothing}
    ${ahead(standing, leaderboard.teams)}`;
}

/** How sure it is that the team is above the next one in order. */
function ahead(standing, teams) {
  const next = teams[teams.indexOf(standing) + 1];
  if (standing.chanceAboveNext == null || next?.place == null) return nothing;
  const percent = Math.min(99, Math.max(1, Math.round(100 * standing.chanceAboveNext))); // trials make nothing certain
  return html`<p class="soft">${t('page.bench.chanceAhead', { percent, team: next.name })}</p>`;
}

/** Cells that are not ranked yet, with the first thing that each of them lacks. */
function whatMoves(standing) {
  const waiting = (standing?.cells ?? []).filter(cell => !cell.ranked && cell.standing !== 'failed' && cell.remark);
  if (waiting.length === 0) return nothing;
  return html`<div><h2 class="small-head">${t('page.bench.whatMoves')}</h2>
    <ul class="bare moves">${waiting.map(({ cellId, label, remark: why }) => html`<li><a href=${to('cell', cellId)}>${label}</a> ${remark(why)}</li>`)}</ul></div>`;
}

function slide(cell, data) {
  const readings = data.readings(cell.id);
  const stages = stagesOf(cell, readings, data.catalogue);
  const next = nextStep(stages, readings);
  return html`<a class="slide" href=${to('cell', cell.id)}>
    <span class="label">${cell.label}</span>
    <span class="body">
      <bw-cell .stages=${statesByStage(stages)}></bw-cell>
      <span class="next">${nextWords(next)}${slotTag(data, cell.id)}${timeLeft(cell, next, data)}${power(data.result(cell.id))}
        ${cell.pending ? html`<span class="tag pending"><bw-icon name="waiting"></bw-icon>${t('page.bench.onThisPhone')}</span>` : nothing}</span>
    </span></a>`;
}

function timeLeft(cell, { kind, stage }, data) {
  const until = kind === 'stage' ? endOf(cell.id, stage.key)
    : kind === 'done' ? comeBackAt(data.result(cell.id), data.readings(cell.id)) : settledFrom(cell);
  return until ? html`<bw-time-left .until=${until} .over=${kind === 'stage' ? t('page.bench.timeIsUp') : nothing}></bw-time-left>` : nothing;
}

const power = result => (result?.powerDensityWm2
  ? html`<span class="soft small">${t('page.bench.cellPower', powerDensityTexts(result.powerDensityWm2))}</span>
    ${result.missing.length ? html`<strong class="small">${t('page.bench.unranked')}</strong>` : nothing}` : nothing);

/** The next step in a few words, with the sign of heat where the stage is hot. */
export function nextWords({ kind, stage }) {
  const name = t(`catalogue.stage.${stage.key}`);
  if (kind === 'failed') return html`<strong class="over">${t('page.bench.endedAt', { stage: name })}</strong> <span class="soft small">${t('page.bench.seeAdvice')}</span>`;
  if (kind === 'done') return html`<strong>${t('page.bench.measured')}</strong>`;
  const words = kind === 'stage' ? name : t(`page.bench.reading.${kind}`);
  return html`<span class="soft small">${t('page.bench.next')}</span>
    <strong>${stage.hot && kind === 'stage' ? html`<bw-icon name="hot" .label=${t('page.bench.hot')}></bw-icon> ` : nothing}${words}</strong>`;
}

function register({ cells, labDay, team }) {
  const limit = (labDay?.cellsPerTeam ?? 0) * (1 + (team?.joined.length ?? 0)); // a team that others were joined to has room for theirs
  if (labDay && cells.length >= limit) return html`<p class="soft">${t('page.bench.allRegistered', { limit })}</p>`;
  return html`<a class="button whole ${cells.length ? 'quiet' : ''}" href=${to('new')}><bw-icon name="add"></bw-icon>
    ${t('page.bench.register')}</a>
    ${labDay ? html`<p class="soft small">${t('page.bench.registerCount', { count: cells.length, limit })}</p>` : nothing}`;
}

function anotherPhone(team) {
  if (!team?.code) return nothing;
  return html`<details class="fold"><summary>${t('page.bench.anotherPhone')}</summary>
    <div class="flow code-card">
      <p>${t('page.bench.anotherPhoneHow')}</p>
      <img class="qr" src="/api/teams/${team.id}/link.svg" alt=${t('page.bench.qr')} width="232" height="232" loading="lazy"
        @error=${event => { event.target.hidden = true; }}>
      <p class="join-code">${team.code}</p>
    </div></details>`;
}
