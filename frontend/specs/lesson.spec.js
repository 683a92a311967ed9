import { leftText, milestone, minutesOver } from '/core/countdown.js';
import { scopes, secondsOf } from '/desk/timers.js';
import { lastAt, timeOfDay, wholeOf } from '/desk/heater-entry.js';
import { slotsWith } from '/lesson/waiting.js';
import { cooling, heatState, heatersOf, slotOfCell } from '/lesson/heat.js';
import { presenceOf, tellPresence } from '/lesson/presence.js';
import { standingAnnouncement, whenRevised } from '/live/room.js';
import { sharing } from '/live/stomp.js';
import { same, spec, thrownBy } from './spec.js';

const MINUTE = 60_000;
const NOON = Date.parse('2026-11-25T12:00:00Z');
const at = minutes => new Date(NOON + minutes * MINUTE).toISOString();

spec('shows what is left as a kitchen clock does', () =>
  same([leftText(65_000, 0), leftText(59_001, 0), leftText(5_400_000, 0), leftText(0, 1)], ['1:05', '1:00', '1:30:00', '0:00']));

spec('counts whole minutes since the end', () =>
  same([minutesOver(0, -1), minutesOver(0, 0), minutesOver(0, MINUTE - 1), minutesOver(0, 2 * MINUTE)], [null, 0, 0, 2]));

spec('has three moments worth saying aloud', () =>
  same([6, 5, 1.5, 1, 0, -3].map(left => milestone(left * MINUTE, 0)), [null, 'five', 'five', 'one', 'over', 'over']));

const slot = (over = {}) => ({
  id: 's', cellId: 'c', label: 'C1', heater: 'Plate A', position: 2,
  inAt: at(-50), holdUntil: at(0), outAt: null, coolUntil: null, ...over,
});

spec('heats a cell until its time is over', () =>
  same([heatState(slot(), NOON - 1), heatState(slot(), NOON)], ['HEATING', 'HOLD_OVER']));

spec('calls a cell touchable only after it was taken out and cooled', () => {
  const out = slot({ outAt: at(1), coolUntil: at(31) });
  same([heatState(out, NOON + 30 * MINUTE), heatState(out, NOON + 31 * MINUTE)], ['COOLING', 'TOUCHABLE']);
  same(heatState(slot(), NOON + 600 * MINUTE), 'HOLD_OVER');
});

spec('draws a heater with its positions, free ones among them', () => {
  const heaters = heatersOf([slot(), slot({ id: 't', heater: 'plate a', position: 3, outAt: at(0), coolUntil: at(30) })]);
  same(heaters.map(({ heater, spots }) => [heater, spots.map(spot => spot.slot?.id ?? 'free')]), [['Plate A', ['free', 's', 'free']]]);
});

spec('shows two cells that are said to lie on one position', () => {
  const [{ spots }] = heatersOf([slot({ position: 1 }), slot({ id: 't', position: 1 })]);
  same(spots.map(spot => [spot.position, spot.slot.id, spot.twice]), [[1, 's', true], [1, 't', true]]);
});

spec('shows what was taken out for half an hour beyond cool, the hottest first', () => {
  const slots = [slot({ id: 'a', outAt: at(-70), coolUntil: at(-40) }), slot({ id: 'b', outAt: at(-40), coolUntil: at(-10) }), slot({ id: 'c', outAt: at(-5), coolUntil: at(25) })];
  same(cooling(slots, NOON).map(({ id }) => id), ['c', 'b']);
});

spec('finds the stay that counts for a cell', () => {
  const earlier = slot({ id: 'earlier', outAt: at(-5), coolUntil: at(25) });
  same(slotOfCell([earlier, slot({ id: 'now' })], 'c', NOON).id, 'now');
  same(slotOfCell([earlier], 'c', NOON).id, 'earlier');
  same(slotOfCell([earlier], 'other', NOON), null);
});

spec('takes a cell for hot as long as nobody knows until when', () =>
  same(heatState(slot({ outAt: at(-900), coolUntil: null }), NOON), 'COOLING'));

const put = (id, body, state = 'waiting') => ({ id, state, about: { kind: 'heater', label: 'C1' }, body: { cellId: 'c', heater: 'Plate B', position: 1, target: { text: '450', unit: 'degC' }, holdMinutes: 30, replaces: null, inAt: at(-10), ...body } });
const out = (slotId, outAt) => ({ id: 'o', state: 'waiting', about: { kind: 'heaterOut' }, body: { slotId, outAt } });

spec('shows a cell on its heater while the entry still waits on the phone', () => {
  const [waiting] = slotsWith([], [put('p')], 30);
  same([waiting.heater, waiting.targetDegC, waiting.holdUntil, waiting.pending], ['Plate B', 450, at(20), true]);
  same(slotsWith([slot({ id: 'p' })], [put('p')], 30).length, 1);
  same(slotsWith([], [put('p', {}, 'refused')], 30), []);
});

spec('shows a cell as taken off at its own time while the entry still waits', () => {
  const [off] = slotsWith([slot()], [out('s', at(-3))], 30);
  same([off.outAt, off.coolUntil, heatState(off, NOON)], [at(-3), at(27), 'COOLING']);
  same(slotsWith([], [put('p'), out('p', at(-1))], 30)[0].outAt, at(-1));
  same(slotsWith([slot()], [out('s', at(-3))], null)[0].coolUntil, null);
});

spec('shows a waiting correction in the place of what it replaces, with its time', () => {
  const corrected = slotsWith([slot()], [put('p', { replaces: 's', inAt: null })], 30);
  same(corrected.map(({ id, heater, inAt }) => [id, heater, inAt]), [['p', 'Plate B', at(-50)]]);
});

spec('takes a time of the day for the last one that was', () => {
  const now = new Date(2026, 10, 25, 12, 30).getTime();
  const day = (date, hours, minutes) => new Date(2026, 10, date, hours, minutes).toISOString();
  same([lastAt('12:05', now), lastAt('12:45', now), lastAt('', now), lastAt('noon', now)], [day(25, 12, 5), day(24, 12, 45), null, null]);
  same(timeOfDay(day(25, 9, 5)), '09:05');
});

spec('offers each team and then its cells for a timer', () => {
  const teams = [{ id: 'a', name: 'Sloe' }, { id: 'b', name: 'Elder' }];
  same(scopes(teams, [{ id: 'e1', teamId: 'b', label: 'E1' }, { id: 's1', teamId: 'a', label: 'S1' }]).map(({ key }) => key), ['a', 's1', 'b', 'e1']);
});

spec('lets an announcement go at its end', () => {
  const room = { announcement: { words: 'Break', until: at(1) } };
  same([standingAnnouncement(room, NOON)?.words, standingAnnouncement(room, NOON + MINUTE), standingAnnouncement(null, NOON)], ['Break', null, null]);
  same(standingAnnouncement({ announcement: { words: 'Goggles', until: null } }, NOON + 999 * MINUTE).words, 'Goggles');
});

const settled = async () => { for (let i = 0; i < 5; i++) await Promise.resolve(); };

spec('reads the day again once for changes that come while it reads', async () => {
  const room = Object.assign(new EventTarget(), { body: null });
  const ends = [];
  whenRevised(room, () => new Promise(end => ends.push(end)));
  const revise = revision => { room.body = { revision }; room.dispatchEvent(new Event('change')); };
  [5, 5, 6, 7].forEach(revise);
  same(ends.length, 1);
  ends[0]();
  await settled();
  same(ends.length, 2);
  ends[1]();
  await settled();
  revise(7);
  same(ends.length, 2);
});

const entry = (state, code) => ({ state, problem: code ? { code } : null });

spec('tells how many entries wait and why others were refused', () =>
  same(presenceOf([entry('waiting'), entry('refused', 'labday.closed'), entry('waiting')]), { waiting: 2, refusedCodes: ['labday.closed'] }));

spec('tells of a phone at once, when something is new, and never of the same twice', async () => {
  const outbox = Object.assign(new EventTarget(), { entries: [] });
  const told = [];
  const change = async entries => { outbox.entries = entries; outbox.dispatchEvent(new Event('changed')); await settled(); };
  await tellPresence(outbox, { put: async (path, body) => { told.push([path, body.waiting]); }, every: () => {}, phoneId: 'p' });
  await change([]);
  await change([entry('waiting')]);
  same(told, [['/api/phones/p', 0], ['/api/phones/p', 1]]);
});

spec('does not mind when nobody hears of the phone', async () => {
  const outbox = Object.assign(new EventTarget(), { entries: [] });
  let tick;
  let tries = 0;
  await tellPresence(outbox, { put: async () => { tries++; throw new Error('no answer'); }, every: (ms, task) => { tick = task; }, phoneId: 'p' });
  await tick();
  same(tries, 2);
});

spec('reads minutes as typed and refuses the rest at its field', async () => {
  same(secondsOf(' 30 '), 1800);
  for (const typed of ['0', '481', '1.5', 'ten', '']) same((await thrownBy(() => secondsOf(typed))).field, 'durationS', typed);
});

spec('reads whole numbers as typed and refuses the rest at their field', async () => {
  same([' 3 ', '12'].map(typed => wholeOf(typed, 'position')), [3, 12]);
  for (const typed of ['0', '1.5', '', '-1']) same((await thrownBy(() => wholeOf(typed, 'position'))).field, 'position', typed);
});

/** Sockets that a spec controls. */
function sockets() {
  const made = [];
  const open = sharing(ears => {
    const client = { ears, topics: [], subscribe: (topic, hear) => client.topics.push({ topic, hear }), deactivate: () => { client.gone = true; } };
    made.push(client);
    return client;
  });
  return { made, open };
}

const ears = (log, name) => ({
  opened: () => log.push(`${name} opened`), heard: message => log.push(`${name} ${message.seq}`), closed: () => log.push(`${name} closed`),
});

spec('brings two topics over one socket', () => {
  const { made, open } = sockets();
  const log = [];
  open('/a', ears(log, 'a'));
  made[0].ears.connected();
  open('/b', ears(log, 'b'));
  made[0].topics[1].hear({ body: '{"seq":4}' });
  same([made.length, log], [1, ['a opened', 'b opened', 'b 4']]);
});

spec('ends the socket for all topics at once and opens another for the next', () => {
  const { made, open } = sockets();
  const log = [];
  const first = open('/a', ears(log, 'a'));
  open('/b', ears(log, 'b'));
  first.close();
  made[0].ears.ended();
  same([made[0].gone, log], [true, ['a closed', 'b closed']]);
  open('/a', ears(log, 'a'));
  same(made.length, 2);
});
