import { withAccepted, withReading } from '/bench/accepted.js';
import { same, spec } from './spec.js';

const cell = { id: 'c1', label: 'C1', outcomes: [{ id: 'o1', replacedBy: null }] };
const entry = (kind, body = {}) => ({ about: { kind, cellId: 'c1' }, body });

spec('shows an acknowledged registration at once', () =>
  same(withAccepted([], entry('cell'), cell), [cell]));

spec('shows a corrected build sheet in the place of the old one', () =>
  same(withAccepted([cell], entry('sheet'), { ...cell, sheetId: 's2' }), [{ ...cell, sheetId: 's2' }]));

spec('adds an acknowledged outcome and marks the one it replaces', () =>
  same(withAccepted([cell], entry('outcome', { replaces: 'o1' }), { id: 'o2' })[0].outcomes, [{ id: 'o1', replacedBy: 'o2' }, { id: 'o2' }]));

spec('adds an acknowledged refill once', () => {
  const refilled = withAccepted([cell], entry('event'), { id: 'e1', kind: 'refill' });
  same(withAccepted(refilled, entry('event'), { id: 'e1', kind: 'refill' })[0].events, [{ id: 'e1', kind: 'refill' }]);
});

spec('leaves other cells alone', () =>
  same(withAccepted([{ ...cell, id: 'c2' }], entry('outcome'), { id: 'o2' })[0].outcomes.length, 1));

spec('adds an acknowledged reading once', () => {
  const once = withReading([], entry('reading'), { id: 'r1' });
  same(withReading(once, entry('reading'), { id: 'r1' }), [{ id: 'r1' }]);
});
