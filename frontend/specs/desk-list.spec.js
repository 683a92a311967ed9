import { readRoute, toCell, toPanel } from '/desk/route.js';
import { settle } from '/desk/still.js';
import { same, spec } from './spec.js';

const items = (...ids) => ids.map(id => ({ id }));

spec('shows the newest list while nobody points at it', () =>
  same(settle(items('a', 'b'), items('c', 'a'), false), { items: items('c', 'a'), waiting: 0 }));

spec('keeps every line in its place while somebody points at the list', () =>
  same(settle(items('a', 'b'), items('b', 'a'), true), { items: items('a', 'b'), waiting: 0 }));

spec('marks what is gone meanwhile instead of moving the lines below', () =>
  same(settle(items('a', 'b'), items('b'), true).items, [{ id: 'a', gone: true }, { id: 'b' }]));

spec('counts what is new and shows it later', () =>
  same(settle(items('a'), items('x', 'a', 'y'), true), { items: items('a'), waiting: 2 }));

spec('takes up what changed about a line that stays', () =>
  same(settle(items('a'), [{ id: 'a', putOffUntil: 'later' }], true).items, [{ id: 'a', putOffUntil: 'later' }]));

spec('reads the day alone, a cell and a panel off the address', () =>
  same([readRoute('#d1'), readRoute(toCell('d1', 'c1')), readRoute(toPanel('d1', 'day')), readRoute('')], [
    { day: 'd1', kind: null, id: null }, { day: 'd1', kind: 'cell', id: 'c1' },
    { day: 'd1', kind: 'panel', id: 'day' }, { day: '', kind: null, id: null }]));
