import { minutesLeft, minutesUntil, standingOf, timeAfter } from '/safety/standing.js';
import { same, spec } from './spec.js';

const now = Date.parse('2026-09-24T13:00:00Z');
const at = time => Date.parse(`2026-09-24T${time}:00Z`);
const signOff = (id, until, more = {}) => ({ id, teamId: 'sloe', zone: 'heat', reason: null, validUntil: `2026-09-24T${until}:00Z`, withdrawnAt: null, ...more });
const standing = (...signOffs) => standingOf(signOffs, 'sloe', 'heat', now);

spec('knows no sign-off', () => same(standing(), { state: 'none', until: null, reason: null, id: null }));
spec('holds until its end', () => same(standing(signOff('a', '13:40')), { state: 'valid', until: at('13:40'), reason: null, id: 'a' }));
spec('ends at its end, not after', () => same(standing(signOff('a', '13:00')).state, 'ended'));
spec('takes the one that holds longest', () => same(standing(signOff('a', '12:10'), signOff('b', '14:00'), signOff('c', '13:30')).id, 'b'));
spec('ends with a withdrawal', () => {
  const withdrawn = signOff('a', '14:00', { withdrawnAt: '2026-09-24T12:50:00Z' });
  same(standing(withdrawn), { state: 'withdrawn', until: at('12:50'), reason: null, id: 'a' });
  same(standing(withdrawn, signOff('b', '13:20')).id, 'b');
});
spec('looks at this team and this zone only', () => {
  same(standing(signOff('a', '14:00', { teamId: 'elder' })).state, 'none');
  same(standing(signOff('a', '14:00', { zone: 'flame' })).state, 'none');
});
spec('counts the minutes left, a begun one whole', () => {
  same(minutesLeft(now + 61_000, now), 2);
  same(minutesLeft(now - 1, now), 0);
});
spec('reads a time of the day as minutes from now', () => {
  same(minutesUntil('14:30', new Date(2026, 8, 24, 13, 0)), 90);
  same(minutesUntil('00:30', new Date(2026, 8, 24, 23, 45)), 45);
  same(Number.isNaN(minutesUntil('', new Date())), true);
});
spec('offers the next five minutes', () => {
  same(timeAfter(90, new Date(2026, 8, 24, 13, 2)), '14:35');
  same(timeAfter(60, new Date(2026, 8, 24, 23, 0)), '00:00');
});
