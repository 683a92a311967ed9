import { ageOf } from '/light/age.js';
import { standing } from '/light/drift.js';
import { byTeam } from '/light/readings.js';
import { ticks } from '/light/spectrum-plot.js';
import { typedParts } from '/light/typed.js';
import { same, spec } from './spec.js';

const UNITS = [{ key: 'lx', symbols: ['lx'] }, { key: 'klx', symbols: ['klx'] }, { key: 'Wm2', symbols: ['W/m²', 'W/m2'] }];

spec('shows a bare number with the unit chosen beside it', () =>
  same(typedParts({ text: '12.0', unit: 'klx' }, UNITS), { number: '12.0', unit: 'klx' }));

spec('shows a unit inside the text once, as it is written', () =>
  same(typedParts({ text: '124 W/m2', unit: 'lx' }, UNITS), { number: '124', unit: 'W/m²' }));

const READ = '2026-11-25T10:00:00Z';
const after = minutes => Date.parse(READ) + minutes * 60_000;

spec('calls a reading fine until its kind of lamp asks for another', () => {
  same(ageOf(READ, 15, after(15)).tone, 'fine');
  same(ageOf(READ, 15, after(16)).tone, 'unusual');
  same(ageOf(READ, 60, after(16)).tone, 'fine');
});

spec('never calls a reading younger than now', () => same(ageOf(READ, 15, after(-3)).tone, 'fine'));

spec('names the cells that lean on a reading team by team', () =>
  same(byTeam([{ team: 'Hawthorn', label: 'H1' }, { team: 'Larch', label: 'L1' }, { team: 'Hawthorn', label: 'H2' }]), 'Hawthorn H1, H2; Larch L1'));

spec('puts a correction where the light was read, whenever it was written', () => {
  const readings = [
    { id: 'wrong', readAt: READ, replacedBy: 'right' },
    { id: 'later', readAt: '2026-11-25T10:30:00Z', replacedBy: null },
    { id: 'right', readAt: READ, replacedBy: null },
  ];
  same(standing({ readings }).map(({ id }) => id), ['right', 'later']);
});

spec('leaves out what was set aside, until it counts again', () => {
  const reading = (id, ...reasons) => ({ id, readAt: READ, setAside: reasons.map(reason => ({ reason })) });
  const readings = [reading('aside', 'a hand over it'), reading('back', 'a hand over it', null)];
  same(standing({ readings }).map(({ id }) => id), ['back']);
});

spec('marks a spectrum at round wavelengths', () => {
  same(ticks(380, 780), [400, 500, 600, 700]);
  same(ticks(300, 2500), [500, 1000, 1500, 2000, 2500]);
});
