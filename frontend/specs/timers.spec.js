import { comeBackAt, endOf, leftText, minutesToOffer, settledFrom, startTimer, stopTimer } from '/bench/timers.js';
import { same, spec } from './spec.js';

const MINUTE = 60_000;
const cell = parts => ({ id: 'c1', recipe: [], outcomes: [], ...parts });

spec('keeps the end of a wait as a point in time, so that a reload changes nothing', () => {
  startTimer('c1', 'dye', 20, 1_000);
  same(endOf('c1', 'dye'), 1_000 + 20 * MINUTE);
  same(endOf('c1', 'bake'), null);
  stopTimer('c1', 'dye');
  same(endOf('c1', 'dye'), null);
});

spec('counts down like a kitchen clock and stops at nothing', () => {
  same(leftText(545_000, 0), '9:05');
  same(leftText(5_400_000, 0), '1:30:00');
  same(leftText(0, 10), '0:00');
});

spec('offers the minutes of the recipe first', () => {
  same(minutesToOffer(cell({ recipe: [{ parameter: 'soakTime', number: 45 }] }), 'dye'), [45, 10, 20]);
  same(minutesToOffer(cell({ recipe: [{ parameter: 'soakTime', number: 20 }] }), 'dye'), [20, 10, 30]);
  same(minutesToOffer(cell(), 'fill'), []);
});

spec('lets a cell settle for ten minutes from its last filling', () => {
  const filled = { stage: 'fill', passed: true, replacedBy: null, acceptedAt: '2026-05-05T12:00:00Z' };
  same(settledFrom(cell()), null);
  same(settledFrom(cell({ outcomes: [filled] })), Date.parse('2026-05-05T12:10:00Z'));
  same(settledFrom(cell({ outcomes: [filled], events: [{ kind: 'refill', acceptedAt: '2026-05-05T12:30:00Z' }, { kind: 'repair', acceptedAt: '2026-05-05T12:50:00Z' }] })),
    Date.parse('2026-05-05T12:40:00Z'));
});

spec('comes back when the server says so, counted from the latest light reading', () => {
  const readings = [{ kind: 'light', acceptedAt: '2026-05-05T12:30:00Z', readAt: '2026-05-05T12:00:00Z' }, { kind: 'dark', acceptedAt: '2026-05-05T12:05:00Z' }];
  const settling = { notes: [{ key: 'standing.settling', values: { percent: 8, minutes: 12 } }] };
  same(comeBackAt(settling, readings), Date.parse('2026-05-05T12:12:00Z'));
  same(comeBackAt({ notes: [] }, readings), null);
  same(comeBackAt(null, readings), null);
});
