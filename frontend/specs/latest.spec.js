import { latest } from '/core/latest.js';
import { same, spec } from './spec.js';

/** A clock that runs only when told, a server that answers only when told, and what was shown. */
function stage(failed = () => true) {
  const [timers, asked, shown] = [[], [], []];
  const later = action => timers.push({ action }) - 1;
  const never = at => { if (timers[at]) timers[at].action = null; };
  const ask = (wanted, signal) => new Promise((answer, refuse) => asked.push({ wanted, signal, answer, refuse }));
  const asking = latest({ ask, answered: answer => shown.push(answer), failed, later, never, random: () => 0 });
  const pass = () => timers.splice(0, timers.length, ...[]).forEach(({ action }) => action?.());
  return { ...asking, asked, shown, pass };
}

const settled = () => new Promise(resolve => setTimeout(resolve));

spec('asks once for a number that is still being typed', () => {
  const it = stage();
  it.want(1);
  it.want(12);
  it.pass();
  same(it.asked.map(({ wanted }) => wanted), [12]);
});

spec('cancels the question that was overtaken', () => {
  const it = stage();
  it.want(1);
  it.pass();
  it.want(2);
  same(it.asked[0].signal.aborted, true);
});

spec('shows the newest answer when answers come in another order', async () => {
  const it = stage();
  it.want(1);
  it.pass();
  it.want(2);
  it.pass();
  it.asked[1].answer('two');
  it.asked[0].answer('one');
  await settled();
  same(it.shown, ['two']);
});

spec('asks again where there was no answer', async () => {
  const it = stage();
  it.want(1);
  it.pass();
  it.asked[0].refuse(new Error('no answer'));
  await settled();
  it.pass();
  same(it.asked.length, 2);
});

spec('takes a refusal as the last word', async () => {
  const it = stage(() => false);
  it.want(1);
  it.pass();
  it.asked[0].refuse(new Error('no'));
  await settled();
  it.pass();
  same(it.asked.length, 1);
});

spec('asks no more about what became unreadable', () => {
  const it = stage();
  it.want(1);
  it.forget();
  it.pass();
  same(it.asked, []);
});
