import { LET_GO, arrived, toggled } from '/live/hold.js';
import { same, spec } from './spec.js';

const [first, second, third] = ['first', 'second', 'third'];
const held = toggled(arrived(LET_GO, first));

spec('shows what arrives', () => same(arrived(LET_GO, first).shown, first));

spec('holds its picture while paused and counts what waits', () => {
  const { shown, waiting } = [second, third].reduce(arrived, held);
  same([shown, waiting], [first, 2]);
});

spec('does not count the same picture twice', () => same([second, second].reduce(arrived, held).waiting, 1));

spec('shows the newest when it is let go', () => {
  const { shown, waiting } = toggled([second, third].reduce(arrived, held));
  same([shown, waiting], [third, 0]);
});

spec('shows a first picture even while paused', () => same(arrived(toggled(LET_GO), first).shown, first));
