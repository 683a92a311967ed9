import { Refused, Unreachable } from '/core/http.js';
import { Outbox } from '/outbox/outbox.js';
import { same, spec } from './spec.js';

/** A store in memory that two outboxes may share, as two tabs share a database. */
function memoryStore() {
  const entries = new Map();
  let held = null;
  return {
    all: async () => [...entries.values()].sort((a, b) => a.order - b.order),
    put: async entry => void entries.set(entry.id, entry),
    remove: async id => void entries.delete(id),
    claim: async (owner, now, untilMs) => {
      const free = !held || held.owner === owner || held.untilMs <= now;
      if (free) held = { owner, untilMs };
      return free;
    },
    release: async owner => { if (held?.owner === owner) held = null; },
  };
}

/** A clock that stands until it is moved. */
function stillClock() {
  let now = 1_000;
  const tasks = [];
  return {
    tasks,
    now: () => now,
    wall: () => now,
    move: ms => { now += ms; },
    after: (ms, task) => tasks.push({ ms, task }),
    cancel: () => {},
  };
}

/** A server that answers each PUT by the next of `answers`; an answer may throw. Records what arrived. */
function server(...answers) {
  const arrived = [];
  const put = async (path, body) => {
    arrived.push({ path, body });
    return (answers.shift() ?? (() => ({})))();
  };
  return { arrived, put };
}

const silence = () => { throw new Unreachable(new TypeError('Failed to fetch')); };
const says = (status, code = 'x', detail = 'No.') => () => { throw new Refused(status, { code, detail }); };

function tab(fake, { store = memoryStore(), clock = stillClock(), owner = 'tab' } = {}) {
  return { outbox: new Outbox({ store, put: fake.put, clock, random: () => 0.5, owner }), store, clock };
}

const entry = (id, about = { kind: 'reading', cellId: 'c1' }) => ({ id, path: `/api/x/${id}`, body: { id }, about });
/** Everything in memory answers at once, so one turn of the event loop lets a run end. */
const settled = () => new Promise(resolve => setTimeout(resolve));
const states = outbox => outbox.entries.map(({ id, state }) => [id, state]);

spec('stores an entry before it sends it', async () => {
  const seen = [];
  const { outbox, store } = tab({ put: async () => { seen.push((await store.all()).length); } });
  await outbox.add(entry('a'));
  await settled();
  same(seen, [1]);
});

spec('fails loudly and sends nothing when the phone refuses to store', async () => {
  const fake = server();
  const store = { ...memoryStore(), put: async () => { throw new DOMException('full', 'QuotaExceededError'); } };
  const { outbox } = tab(fake, { store });
  const failure = await outbox.add(entry('a')).catch(error => error.name);
  same([failure, fake.arrived.length], ['QuotaExceededError', 0]);
});

spec('sends in the order of entering and forgets what the server has', async () => {
  const fake = server();
  const { outbox } = tab(fake);
  await outbox.add(entry('b'));
  await outbox.add(entry('a'));
  await settled();
  same(fake.arrived.map(each => each.path), ['/api/x/b', '/api/x/a']);
  same(outbox.entries, []);
});

spec('tells who listens what was acknowledged, with the answer', async () => {
  const { outbox } = tab(server(() => ({ label: 'C1' })));
  const heard = [];
  outbox.addEventListener('sent', event => heard.push([event.detail.entry.id, event.detail.answer.label]));
  await outbox.add(entry('a'));
  await settled();
  same(heard, [['a', 'C1']]);
});

spec('keeps an entry through silence and sends it once on return', async () => {
  const fake = server(silence, silence);
  const { outbox, clock } = tab(fake);
  await outbox.add(entry('a'));
  await settled();
  same(states(outbox), [['a', 'waiting']]);
  await clock.tasks[0].task();
  await clock.tasks[1].task();
  await outbox.drain();
  same([outbox.entries.length, fake.arrived.length], [0, 3]);
});

spec('stops at the first silence, so that the order holds', async () => {
  const fake = server(silence);
  const { outbox } = tab(fake);
  await outbox.add(entry('a'));
  await settled();
  await outbox.add(entry('b'));
  await settled();
  same(fake.arrived.map(each => each.path), ['/api/x/a', '/api/x/a', '/api/x/b']);
});

for (const status of [408, 429, 500, 503]) {
  spec(`tries again later after ${status}`, async () => {
    const { outbox, clock } = tab(server(says(status)));
    await outbox.add(entry('a'));
    await settled();
    same([states(outbox), clock.tasks.length], [[['a', 'waiting']], 1]);
  });
}

spec('keeps a refused entry with its reason and goes on with the next', async () => {
  const fake = server(says(422, 'quantity.impossible', '400 V cannot be.'));
  const { outbox } = tab(fake);
  await outbox.add(entry('a'));
  await outbox.add(entry('b'));
  await settled();
  same(states(outbox), [['a', 'refused']]);
  same(outbox.entries[0].problem.detail, '400 V cannot be.');
  same(fake.arrived.length, 2);
});

spec('pauses when this phone is signed out, keeps everything, and resumes', async () => {
  const fake = server(says(401));
  const { outbox, clock } = tab(fake);
  await outbox.add(entry('a'));
  await settled();
  same([outbox.signInNeeded, states(outbox), clock.tasks.length], [true, [['a', 'waiting']], 0]);
  await outbox.drain();
  same([outbox.signInNeeded, outbox.entries.length], [false, 0]);
});

spec('sends a corrected entry under the same id in its old place', async () => {
  const fake = server(says(422), silence, silence);
  const { outbox } = tab(fake);
  await outbox.add(entry('a'));
  await settled();
  await outbox.add(entry('b'));
  await outbox.add({ ...entry('a'), body: { mended: true } });
  await settled();
  same(outbox.entries.map(each => each.id), ['a', 'b']);
  await outbox.drain();
  same([fake.arrived.at(-2).body, outbox.entries.length], [{ mended: true }, 0]);
});

spec('holds back what was recorded about a cell that was refused', async () => {
  const fake = server(says(409, 'label.taken'));
  const { outbox } = tab(fake);
  await outbox.add(entry('c1', { kind: 'cell', cellId: 'c1' }));
  await outbox.add(entry('o1', { kind: 'outcome', cellId: 'c1' }));
  await settled();
  same([fake.arrived.length, states(outbox)], [1, [['c1', 'refused'], ['o1', 'waiting']]]);
});

spec('holds back the taking off of a cell whose putting on was refused', async () => {
  const fake = server(says(409, 'heater.taken'));
  const { outbox } = tab(fake);
  await outbox.add(entry('s1', { kind: 'heater', cellId: 'c1' }));
  await outbox.add(entry('o1', { kind: 'heaterOut', cellId: 'c1', after: 's1' }));
  await settled();
  same([fake.arrived.length, states(outbox)], [1, [['s1', 'refused'], ['o1', 'waiting']]]);
  await outbox.discard('s1');
  same(outbox.entries, []);
});

spec('throws an entry away together with what depends on it', async () => {
  const { outbox } = tab(server(says(409)));
  await outbox.add(entry('c1', { kind: 'cell', cellId: 'c1' }));
  await outbox.add(entry('o1', { kind: 'outcome', cellId: 'c1' }));
  await settled();
  await outbox.discard('c1');
  same(outbox.entries, []);
});

spec('lets one of two tabs send, and the other take over when its claim runs out', async () => {
  const [store, clock] = [memoryStore(), stillClock()];
  await store.claim('gone', clock.now(), clock.now() + 15_000);
  const fake = server();
  const { outbox } = tab(fake, { store, clock, owner: 'here' });
  await outbox.add(entry('a'));
  await settled();
  same(fake.arrived.length, 0);
  clock.move(15_000);
  await outbox.drain();
  same([fake.arrived.length, outbox.entries.length], [1, 0]);
});

spec('finds what an earlier page left behind', async () => {
  const store = memoryStore();
  await tab(server(silence), { store }).outbox.add(entry('a'));
  const fake = server();
  const later = tab(fake, { store, owner: 'tab' });
  await later.outbox.start();
  same(fake.arrived.map(each => each.path), ['/api/x/a']);
});

spec('sends an entry that was added while the last one was on its way', async () => {
  const { outbox } = tab({ put: async path => { if (path.endsWith('a')) await outbox.add(entry('b')); } });
  await outbox.add(entry('a'));
  await settled();
  same(outbox.entries, []);
});
