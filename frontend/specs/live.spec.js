import { backoffMs } from '/core/backoff.js';
import { Link } from '/live/link.js';
import { SILENCE_MS } from '/live/line.js';
import { UNHEARD, heard, snapshotArrived, subscribed } from '/live/sequence.js';
import { same, spec } from './spec.js';

const state = (seq, epoch = 'a') => ({ epoch, seq, kind: 'leaderboard', body: `${epoch}${seq}` });
const beat = (seq, epoch = 'a') => ({ epoch, seq, kind: 'beat', body: null });
const following = (seq, epoch = 'a') => snapshotArrived(subscribed(UNHEARD), state(seq, epoch));
const shown = ({ body, wanting }) => ({ body, wanting });

spec('wants a snapshot once it is subscribed', () => same(shown(subscribed(UNHEARD)), { body: null, wanting: true }));

spec('takes the next state in order', () => same(shown(heard(following(4), state(5))), { body: 'a5', wanting: false }));

spec('ignores a state that it has already', () => same(heard(following(4), state(4)), following(4)));

spec('ignores an older state that was overtaken', () => same(heard(following(4), state(2)), following(4)));

spec('keeps its picture over a gap and wants a snapshot', () =>
  same(shown(heard(following(4), state(6))), { body: 'a4', wanting: true }));

spec('closes a gap with the snapshot and what was heard meanwhile', () => {
  const gap = [state(6), state(7)].reduce(heard, following(4));
  same(shown(snapshotArrived(gap, state(6))), { body: 'a7', wanting: false });
});

spec('goes on after two states that changed places', () => {
  const swapped = [state(6), state(5)].reduce(heard, following(4));
  same(shown(snapshotArrived(swapped, state(6))), { body: 'a6', wanting: false });
});

spec('drops what the snapshot holds already', () => {
  const kept = [state(3), state(4), state(5)].reduce(heard, subscribed(UNHEARD));
  same(shown(snapshotArrived(kept, state(4))), { body: 'a5', wanting: false });
});

spec('wants another snapshot when the first is too old to reach what was heard', () => {
  const kept = heard(subscribed(UNHEARD), state(9));
  same(shown(snapshotArrived(kept, state(4))), { body: 'a4', wanting: true });
});

spec('never goes back to a late snapshot of the same server', () =>
  same(shown(snapshotArrived(following(7), state(5))), { body: 'a7', wanting: false }));

spec('starts anew when the server did', () => {
  const restarted = heard(following(40), state(1, 'b'));
  same(shown(restarted), { body: 'a40', wanting: true });
  same(shown(snapshotArrived(restarted, state(1, 'b'))), { body: 'b1', wanting: false });
});

spec('finds a lost last state by the beat that tells its number', () =>
  same(shown(heard(following(4), beat(5))), { body: 'a4', wanting: true }));

spec('is content with a beat that tells the number it has, or an older one', () =>
  same([beat(4), beat(3)].map(each => heard(following(4), each).wanting), [false, false]));

spec('finds a state that was lost between snapshot and subscription by a kept beat', () => {
  const kept = heard(subscribed(UNHEARD), beat(6));
  same(snapshotArrived(kept, state(5)).wanting, true);
});

spec('keeps no more than 64 messages while it waits', () => {
  const long = Array.from({ length: 100 }, (_, index) => state(index + 1)).reduce(heard, subscribed(UNHEARD));
  same([long.kept.length, long.kept.at(-1).seq], [64, 100]);
});

spec('waits up to 1, 2, 4 and at last 30 seconds', () =>
  same([0, 1, 2, 9].map(attempt => backoffMs(attempt, () => 0.5)), [500, 1_000, 2_000, 15_000]));

spec('spreads a wait over the whole span', () =>
  same([backoffMs(2, () => 0), backoffMs(2, () => 1)], [0, 4_000]));

/** A clock that stands still until `pass` moves it and runs what is due. */
function stillClock() {
  let now = 0;
  let waiting = [];
  return {
    now: () => now,
    after(ms, action) {
      const timer = { at: now + ms, action };
      waiting.push(timer);
      return () => { waiting = waiting.filter(each => each !== timer); };
    },
    pass(ms) {
      now += ms;
      const due = waiting.filter(({ at }) => at <= now).sort((a, b) => a.at - b.at);
      waiting = waiting.filter(({ at }) => at > now);
      due.forEach(({ action }) => action());
    },
  };
}

/** A link over sockets and answers that the spec controls. */
function room() {
  const clock = stillClock();
  const sockets = [];
  const asked = [];
  const link = new Link({
    clock,
    random: () => 0.5,
    openSocket(ears) {
      const socket = { ...ears, open: true, close: () => { socket.open = false; } };
      sockets.push(socket);
      return socket;
    },
    fetchSnapshot: () => new Promise((arrive, refuse) => asked.push({ arrive, refuse })),
  }).start();
  const settled = () => Promise.resolve().then(() => {});
  return {
    clock, sockets, asked, link,
    async answer(message) { asked.at(-1).arrive(message); await settled(); },
    async refuse(problem) { asked.at(-1).refuse(problem); await settled(); },
  };
}

/** A room whose link is live at state 4. */
async function liveRoom() {
  const here = room();
  here.sockets[0].opened();
  await here.answer(state(4));
  return here;
}

spec('shows its first picture before the socket is open', async () => {
  const here = room();
  await here.answer(state(4));
  same([here.link.body, here.link.freshness.kind], ['a4', 'stale']);
});

spec('is live once subscribed and caught up', async () => {
  const { link } = await liveRoom();
  same([link.body, link.freshness.kind], ['a4', 'live']);
});

spec('does not hear an answer that a newer question has overtaken', async () => {
  const here = room();
  here.sockets[0].opened();
  here.asked[0].arrive(state(3));
  await here.answer(state(5));
  same([here.asked.length, here.link.body], [2, 'a5']);
});

spec('keeps the last picture and its time when the socket closes', async () => {
  const here = await liveRoom();
  here.clock.pass(7_000);
  here.sockets[0].heard(beat(4));
  here.clock.pass(5_000);
  here.sockets[0].closed();
  same([here.link.body, here.link.freshness], ['a4', { kind: 'stale', at: 7_000 }]);
});

spec('opens a new socket after a while and subscribes again', async () => {
  const here = await liveRoom();
  here.sockets[0].closed();
  here.clock.pass(499);
  same(here.sockets.length, 1);
  here.clock.pass(1);
  here.sockets[1].opened();
  await here.answer(state(9));
  same([here.link.body, here.link.freshness.kind], ['a9', 'live']);
});

spec('is deaf to a socket it has given up', async () => {
  const here = await liveRoom();
  here.sockets[0].closed();
  here.sockets[0].heard(state(5));
  same(here.link.body, 'a4');
});

spec('takes a socket for dead after two missed beats', async () => {
  const here = await liveRoom();
  here.clock.pass(SILENCE_MS);
  same([here.sockets[0].open, here.link.freshness.kind], [false, 'stale']);
});

spec('waits longer each time nobody answers', async () => {
  const here = room();
  here.sockets[0].closed();
  here.clock.pass(500);
  here.sockets[1].closed();
  here.clock.pass(999);
  same(here.sockets.length, 2);
  here.clock.pass(1);
  same(here.sockets.length, 3);
});

spec('does not wait when the network comes back', async () => {
  const here = await liveRoom();
  here.sockets[0].closed();
  here.link.hurry();
  same(here.sockets.length, 2);
});

spec('asks for the snapshot again after a refusal and tells what stood in the way', async () => {
  const here = room();
  await here.refuse('no');
  same([here.link.problem, here.link.freshness.kind], ['no', 'waiting']);
  here.clock.pass(500);
  await here.answer(state(2));
  same([here.link.problem, here.link.body], [null, 'a2']);
});

spec('asks once for a gap, however many messages follow it', async () => {
  const here = await liveRoom();
  const before = here.asked.length;
  [state(6), state(7), state(8)].forEach(here.sockets[0].heard);
  same(here.asked.length, before + 1);
  await here.answer(state(7));
  same(here.link.body, 'a8');
});

spec('falls quiet when stopped', async () => {
  const here = await liveRoom();
  here.link.stop();
  here.clock.pass(10 * SILENCE_MS);
  same(here.sockets.length, 1);
});
