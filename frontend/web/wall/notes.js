/**
 * What changed since the last picture: which teams moved and from where, and the one piece of news worth a line. Pure, so
 * that a picture seen twice tells nothing twice.
 *
 * @typedef {{state: ?object, moves: Map<string, {from: string, at: number}>, news: ?{key: string, values: object, at: number}}} Notes
 */
import { placeOf } from '../core/place.js';

const MOVES_STAY_MS = 120_000;
const NEWS_STAYS_MS = 45_000;

/** @type {Notes} */
export const NOTHING_NOTED = Object.freeze({ state: null, moves: new Map(), news: null });

/** The notes after another picture came, at `now` in milliseconds. */
export function noted(notes, state, now) {
  if (!state || state === notes.state) return fresh(notes, now);
  const before = notes.state;
  if (!before) return { ...notes, state };
  if (before.rule !== state.rule) return ruleChanged(before, state, now);
  const happened = newsOf(before, state);
  return fresh({
    state,
    moves: new Map([...notes.moves, ...movesOf(before, state, now)]),
    news: happened ? { ...happened, at: now } : notes.news,
  }, now);
}

/** Under another rule nobody moved: it is another ranking. */
function ruleChanged(before, state, at) {
  const key = before.metric === state.metric ? 'ruleCount' : 'rule';
  return { state, moves: new Map(), news: { key, values: { metric: `catalogue.metric.${state.metric}` }, at } };
}

function fresh(notes, now) {
  const moves = new Map([...notes.moves].filter(([, { at }]) => now - at < MOVES_STAY_MS));
  const news = notes.news && now - notes.news.at < NEWS_STAYS_MS ? notes.news : null;
  return { ...notes, moves, news };
}

/** Teams whose group moved; a team that is ranked for the first time did not move. */
function movesOf(before, after, at) {
  const earlier = new Map(before.teams.map(team => [team.teamId, team]));
  return after.teams
    .filter(({ teamId, place }) => place != null && (earlier.get(teamId)?.place ?? place) !== place)
    .map(({ teamId }) => [teamId, { from: placeOf(earlier.get(teamId)), at }]);
}

/** A new first place matters most, then a cell that counts now, then one that failed. */
function newsOf(before, after) {
  return leads(before, after) ?? cellThat('counts', before, after) ?? cellThat('failed', before, after);
}

function leads(before, after) {
  const first = state => state.teams.filter(team => team.place === 1).map(team => team.name).join(', ');
  const names = first(after);
  return names && names !== first(before) ? { key: names.includes(', ') ? 'leadTogether' : 'leads', values: { names } } : null;
}

const IS = { counts: cell => cell.ranked, failed: cell => cell.standing === 'failed' };

function cellThat(standing, before, after) {
  const is = IS[standing];
  const earlier = new Set(before.teams.flatMap(team => team.cells).filter(is).map(cell => cell.cellId));
  for (const team of after.teams) {
    const cell = team.cells.find(each => is(each) && !earlier.has(each.cellId));
    if (cell) return { key: standing, values: { label: cell.label, team: team.name } };
  }
  return null;
}
