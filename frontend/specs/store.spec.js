import { openStore } from '/outbox/store.js';
import { newId } from '/core/ids.js';
import { same, spec } from './spec.js';

const fresh = () => openStore(`spec-${newId()}`);

spec('keeps entries in the browser’s database in order', async () => {
  const store = await fresh();
  await store.put({ id: 'b', order: 2 });
  await store.put({ id: 'a', order: 1 });
  same((await store.all()).map(each => each.id), ['a', 'b']);
  await store.remove('a');
  same((await store.all()).map(each => each.id), ['b']);
});

spec('gives the claim to one of two that ask at once', async () => {
  const store = await fresh();
  same((await Promise.all([store.claim('one', 0, 10), store.claim('two', 0, 10)])).filter(Boolean).length, 1);
});

spec('gives the claim on after release or expiry', async () => {
  const store = await fresh();
  await store.claim('one', 0, 10);
  same(await store.claim('two', 9, 20), false);
  same(await store.claim('two', 10, 20), true);
  await store.release('two');
  same(await store.claim('one', 11, 30), true);
});
