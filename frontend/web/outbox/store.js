/** The phone's own database: entries on their way, and the claim that lets one tab send at a time. */
import { openDB } from 'idb';

/** Opens the store. Rejects where the browser refuses storage (a private tab, a full disk). */
export async function openStore(name = 'berrywatt') {
  const database = await openDB(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore('entries', { keyPath: 'id' }).createIndex('order', 'order');
      fresh.createObjectStore('claims', { keyPath: 'task' });
    },
  });
  return {
    all: () => database.getAllFromIndex('entries', 'order'),
    put: entry => database.put('entries', entry),
    remove: id => database.delete('entries', id),
    claim: (owner, now, untilMs) => claim(database, owner, now, untilMs),
    release: owner => release(database, owner),
  };
}

/** Reads and writes the claim row in one transaction, so that two tabs cannot both get it. */
async function claim(database, owner, now, untilMs) {
  const transaction = database.transaction('claims', 'readwrite');
  const held = await transaction.store.get('drain');
  const free = !held || held.owner === owner || held.untilMs <= now;
  if (free) await transaction.store.put({ task: 'drain', owner, untilMs });
  await transaction.done;
  return free;
}

async function release(database, owner) {
  const transaction = database.transaction('claims', 'readwrite');
  const held = await transaction.store.get('drain');
  if (held?.owner === owner) await transaction.store.delete('drain');
  await transaction.done;
}
