import { pointsOf } from '/bench/checklist.js';
import { earlierOutcomes } from '/bench/history.js';
import { same, spec } from './spec.js';

const open = (cell, readings, result) => pointsOf(cell, readings, result).filter(({ done }) => !done).map(({ key }) => key);
const read = (...kinds) => kinds.map(kind => ({ kind }));

spec('asks for everything at first', () => same(open({ id: 'c1', area: null }, []), ['area', 'dark', 'light', 'station']));
spec('takes a load sweep for a light reading', () => same(open({ id: 'c1', area: {} }, read('dark', 'sweep')), []));
spec('waits for the light of the station', () =>
  same(open({ id: 'c1', area: {} }, read('dark', 'light'), { missing: [{ key: 'standing.stationDark' }] }), ['station']));

const outcome = (id, stage, replacedBy = null) => ({ id, stage, replacedBy, acceptedAt: '2026-05-05T12:00:00Z' });
spec('keeps corrected outcomes and those of a stage done again', () =>
  same(earlierOutcomes({ outcomes: [outcome('a', 'film', 'b'), outcome('b', 'film'), outcome('c', 'bake'), outcome('d', 'dye'), outcome('e', 'bake')] })
    .map(({ id }) => id), ['a', 'c']));
