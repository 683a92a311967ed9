/** The outbox of this page, wired to the real store, network and clock. */
import { deviceNow, serverClock } from '../core/clock.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { Outbox } from './outbox.js';
import { openStore } from './store.js';

const clock = {
  now: deviceNow,
  wall: () => serverClock.now(),
  after: (ms, task) => setTimeout(task, ms),
  cancel: timer => clearTimeout(timer),
};

/** Opens the outbox and keeps it going: when the network or the page comes back, and when another tab changed it. */
export async function openOutbox() {
  const outbox = new Outbox({ store: await openStore(), put, clock, random: Math.random, owner: newId() });
  addEventListener('online', () => outbox.drain());
  document.addEventListener('visibilitychange', () => document.hidden || outbox.drain());
  listenToOtherTabs(outbox);
  await outbox.refresh();
  outbox.drain();
  return outbox;
}

function listenToOtherTabs(outbox) {
  if (!('BroadcastChannel' in globalThis)) return;
  const channel = new BroadcastChannel('berrywatt.outbox');
  channel.addEventListener('message', () => outbox.refresh());
  outbox.addEventListener('sent', () => channel.postMessage('sent'));
}
