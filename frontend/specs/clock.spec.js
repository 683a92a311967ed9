import { ServerClock, deviceNow, serverClock } from '/core/clock.js';
import { get } from '/core/http.js';
import '/bench/forms.js';
import { same, spec } from './spec.js';

const MINUTE = 60_000;
const NOON = Date.parse('2026-11-25T12:00:00Z');
const at = minutes => new Date(NOON + minutes * MINUTE).toISOString();

function clockAt(deviceNow) {
  const device = { now: deviceNow };
  return { device, clock: new ServerClock(() => device.now) };
}

spec('takes the device for right until the server has said its time', () => same(clockAt(NOON).clock.now(), NOON));

spec('follows the server when the device is an hour late', () => {
  const { clock, device } = clockAt(NOON - 60 * MINUTE);
  clock.heard(at(0));
  device.now += 5_000;
  same(clock.now(), NOON + 5_000);
});

spec('trusts the answer that took the least time', () => {
  const { clock, device } = clockAt(NOON);
  [300, 40, 900].forEach(late => {
    clock.heard(new Date(device.now - late).toISOString());
    device.now += 10_000;
  });
  same(clock.now() - device.now, -40);
});

spec('forgets what it knew when the device\'s clock jumps', () => {
  const { clock, device } = clockAt(NOON);
  clock.heard(at(0));
  device.now = NOON + 120 * MINUTE;
  clock.heard(at(1));
  same(clock.now(), NOON + MINUTE);
});

spec('ignores a time that is none', () => {
  const { clock } = clockAt(NOON);
  clock.heard('soon');
  same(clock.now(), NOON);
});

spec('goes on counting by the server after a reload, while the server is silent', () => {
  const kept = [];
  const device = NOON - 60 * MINUTE;
  new ServerClock(() => device, { offset: null, keep: offset => kept.push(offset) }).heard(at(0));
  same(new ServerClock(() => device + 5_000, { offset: kept.at(-1), keep: () => {} }).now(), NOON + 5_000);
});

spec('forgets what an earlier page knew when the server says otherwise', () => {
  const clock = new ServerClock(() => NOON, { offset: 90 * MINUTE, keep: () => {} });
  clock.heard(at(1));
  same([clock.now(), clock.stamp()], [NOON + MINUTE, '2026-11-25T12:01:00.000Z']);
});

const catalogue = await get('/api/catalogue');

/** What a form of the bench would send of a draft by now. */
function entryOf(name, draft) {
  const form = document.createElement(name);
  const data = { catalogue, cell: () => ({ label: 'C1' }), readings: () => [], allReadings: () => [], field: key => catalogue.fields.find(field => field.key === key) };
  Object.assign(form, { data, cellId: 'c', part: '', draft: { id: 'e', ...draft } });
  return form.toEntry(form.draft).body;
}

const FORMS = {
  'bw-toggles-form': { unit: 'uA', texts: ['0', '45', '0', '45', '0', '45'], stationId: 's' },
  'bw-sweep-form': { way: 'loadVoltage', voltageUnit: 'mV', rows: [], stationId: 's' },
  'bw-reading-form': { stationId: 's' },
  'bw-work-form': { kind: 'refill', note: '' },
};

spec('stamps what is typed by the server, however wrong the phone', () => {
  serverClock.heard(new Date(deviceNow() + 60 * MINUTE).toISOString());
  try {
    const aheadOfPhone = Object.entries(FORMS).map(([name, draft]) => Math.round((Date.parse(entryOf(name, draft).noticedAt) - deviceNow()) / MINUTE));
    same(aheadOfPhone, Object.keys(FORMS).map(() => 60));
  } finally {
    serverClock.heard(new Date(deviceNow()).toISOString());
  }
});
