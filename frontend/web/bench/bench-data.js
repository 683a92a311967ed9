/** All that a team's bench shows: what the server knows, and over it what this phone has not sent yet. */
import { serverClock } from '../core/clock.js';
import { get } from '../core/http.js';
import { slotsWith, slotsWithAccepted } from '../lesson/waiting.js';
import { withAccepted, withReading } from './accepted.js';

/** Fires `changed` whenever something to draw is new. */
export class BenchData extends EventTarget {
  #outbox;
  #live = null;
  #drawn = null;
  #readings = new Map();
  #results = new Map();

  constructor(who, outbox) {
    super();
    this.teamId = who.teamId;
    this.labDayId = who.labDayId;
    this.fresh = false;
    this.#outbox = outbox;
    Object.assign(this, { catalogue: null, labDay: null, teams: [], stations: [], serverCells: [], planned: [], lesson: null, room: null });
    outbox.addEventListener('changed', () => this.#tell());
    outbox.addEventListener('sent', event => this.#accept(event.detail));
  }

  /** Follows the leaderboard: a new one may mean a new result, a new light reading or a closed day. */
  follow(leaderboard) {
    this.#live = leaderboard;
    leaderboard.addEventListener('change', () => this.#followLive());
  }

  /** Fetches what never changes within a day, then the rest. */
  async open() {
    const refreshed = this.refresh();
    this.catalogue ??= await get('/api/catalogue');
    await refreshed;
    this.#tell();
  }

  get leaderboard() {
    return this.#live?.body ?? null;
  }

  /**
   * Fetches what may have changed. What cannot be fetched stays as it was. Results follow by themselves: they take the
   * server longer, and what to do next hangs on the readings alone.
   */
  async refresh() {
    const day = `/api/labdays/${this.labDayId}`;
    const fetched = await Promise.allSettled([
      this.#fetch(day, answer => { this.labDay = answer; }),
      this.#fetch(`${day}/teams`, answer => this.#hearTeams(answer)),
      this.#fetch(`${day}/stations`, answer => { this.stations = answer; }),
      this.#fetch(`${day}/cells`, answer => { this.serverCells = answer; }),
      this.#fetch(`${day}/plan/cells`, answer => { this.planned = answer; }),
      this.#fetch(`${day}/lesson`, answer => this.#hearLesson(answer)),
    ]);
    this.fresh = fetched.every(each => each.status === 'fulfilled');
    await this.#ofEachCell('readings', this.#readings);
    this.#tell();
    this.#ofEachCell('result', this.#results).then(() => this.#tell());
  }

  get team() {
    return this.teams.find(team => team.id === this.teamId);
  }

  get standing() {
    return this.leaderboard?.teams.find(team => team.teamId === this.teamId);
  }

  /** The team's cells by label, those still waiting on this phone among them. */
  get cells() {
    const known = new Set(this.serverCells.map(cell => cell.id));
    const waiting = this.#pending('cell').filter(entry => !known.has(entry.id)).map(cellOfEntry);
    return [...this.serverCells, ...waiting]
      .map(cell => ({
        ...cell,
        outcomes: [...cell.outcomes, ...this.#pendingOf('outcome', cell.id)],
        events: [...cell.events, ...this.#pendingOf('event', cell.id)],
      }))
      .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));
  }

  /** Where the day's cells are on heaters, what this phone has not sent among them. */
  get slots() {
    return slotsWith(this.lesson?.slots ?? [], [...this.#pending('heater'), ...this.#pending('heaterOut')], this.lesson?.coolDownMinutes);
  }

  /** The teacher's timers for this team, or for one of its cells. */
  get timers() {
    return (this.lesson?.timers ?? []).filter(({ teamId }) => teamId);
  }

  /** Planned cells that nobody has registered yet, neither there nor on this phone. */
  get plannedOpen() {
    const waiting = new Set(this.#pending('planned').map(entry => entry.body.label));
    return this.planned.filter(({ cellId, label }) => !cellId && !waiting.has(label));
  }

  cell(id) {
    return this.cells.find(cell => cell.id === id);
  }

  readings(cellId) {
    const known = this.#readings.get(cellId) ?? [];
    const ids = new Set(known.map(each => each.id));
    const waiting = this.#pendingOf('reading', cellId).filter(each => !ids.has(each.id));
    return [...known.filter(each => !each.replacedBy), ...waiting];
  }

  /** Everything the server has of a cell's readings, corrected ones among them. */
  allReadings(cellId) {
    return this.#readings.get(cellId) ?? [];
  }

  result(cellId) {
    return this.#results.get(cellId) ?? null;
  }

  field(key) {
    return this.catalogue.fields.find(field => field.key === key);
  }

  #accept({ entry, answer }) {
    const { kind, cellId } = entry.about;
    this.serverCells = withAccepted(this.serverCells, entry, answer);
    if (kind === 'heater' || kind === 'heaterOut') this.#hearSlot(entry, answer);
    if (kind === 'reading') this.#readings.set(cellId, withReading(this.#readings.get(cellId) ?? [], entry, answer));
    this.#tell();
    this.refresh();
  }

  /** A team that was joined to another one is that one from now on. */
  #hearTeams(answer) {
    this.teams = answer;
    this.teamId = answer.find(({ id, joined }) => id === this.teamId || joined.includes(this.teamId))?.id ?? this.teamId;
  }

  #hearLesson(answer) {
    serverClock.heard(answer.serverTime);
    this.lesson = answer;
  }

  #hearSlot(entry, answer) {
    if (this.lesson) this.lesson = { ...this.lesson, slots: slotsWithAccepted(this.lesson.slots, entry, answer) };
  }

  #followLive() {
    if (this.#live.body === this.#drawn) return;
    this.#drawn = this.#live.body;
    this.refresh();
  }

  #ofEachCell(what, kept) {
    return Promise.allSettled(this.serverCells.map(({ id }) => this.#fetch(`/api/cells/${id}/${what}`, answer => kept.set(id, answer))));
  }

  async #fetch(path, keep) {
    keep(await get(path));
  }

  #pending(kind) {
    const own = [this.teamId, ...(this.team?.joined ?? [])];
    return this.#outbox.entries.filter(entry => entry.about.kind === kind && own.includes(entry.about.teamId));
  }

  #pendingOf(kind, cellId) {
    return this.#pending(kind).filter(entry => entry.about.cellId === cellId)
      .map(entry => ({ ...entry.body, id: entry.id, pending: entry.state }));
  }

  #tell() {
    this.dispatchEvent(new Event('changed'));
  }
}

function cellOfEntry({ id, body, state }) {
  return { id, ...body, outcomes: [], events: [], sheetId: id, pending: state };
}
