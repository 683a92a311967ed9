import { ticks } from '/report/axis.js';
import { scaleOf } from '/report/interval.js';
import { sum } from '/report/records.js';
import { first } from '/report/summary.js';
import { t } from '/core/texts.js';
import { same, spec } from './spec.js';

const close = (values, wanted) => same(values.map(value => Number(value.toPrecision(6))), wanted);

spec('marks an axis with round numbers up to a little beyond the highest', () => {
  close(ticks(93, 4), [0, 25, 50, 75, 100]);
  close(ticks(0.41, 5), [0, 0.1, 0.2, 0.3, 0.4, 0.5]);
  close(ticks(100, 5), [0, 20, 40, 60, 80, 100]);
});

spec('draws all intervals on one scale, also below zero', () => {
  const { marks, at } = scaleOf([{ low: -10, high: 35 }, { low: 2, high: 40 }]);
  same([at(-10) < at(0), at(0) < at(40), marks.at(-1) >= 40], [true, true, true]);
});

spec('adds up what was recorded of what was asked', () => {
  same(sum([{ records: [{ recorded: 1, asked: 2 }] }, { records: [{ recorded: 3, asked: 3 }] }]), { recorded: 4, asked: 5 });
});

const team = (name, place, placeHigh) => ({ name, place, placeLow: 1, placeHigh, figure: { value: 1, unit: 'Wm2', standardUncertainty: 0.1, low: 0.8, high: 1.2 } });

spec('calls a team first only as surely as the places are', () => {
  const said = (...teams) => first({ teams, metric: 'powerDensity' });
  same(said(team('Newts', 1, 1), team('Wrens', 2, 2)).endsWith(t('page.report.firstSure')), true);
  same(said(team('Newts', 1, 2), team('Wrens', 2, 2)).endsWith(t('page.report.firstOpen', { place: '1–2' })), true);
  same(said(team('Newts', 1, 2), team('Wrens', 1, 2)), t('page.report.sharedFirst', { teams: 'Newts, Wrens' }));
  same(said(team('Newts', null, null)), t('page.report.nobodyFirst'));
});
