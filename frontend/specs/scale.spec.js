import { isLogTick, rangeAround, rangeFromZero, rangeInDecades, roundUp } from '/charts/scale.js';
import { close, same, spec } from './spec.js';

spec('rounds up to a number that is easy to divide', () =>
  [[0.11, 0.15], [2.1, 2.5], [31, 40], [50, 50], [810, 1000]].forEach(([value, round]) => close(roundUp(value), round, value)));

spec('keeps its range while everything fits', () => {
  const earlier = rangeFromZero(42, null);
  same(rangeFromZero(12, earlier), { min: 0, max: 50 });
  same(rangeFromZero(61, earlier), { min: 0, max: 80 });
});

spec('has a range before anything was measured', () => same(rangeFromZero(0, null), { min: 0, max: 1 }));

spec('leaves room for marks at both ends of a logarithmic axis', () => {
  const { min, max } = rangeInDecades([3, 30]);
  same([min < 3 / 1.2, max > 30 * 1.2], [true, true]);
});

spec('ticks 1, 2 and 5 of few decades and only 1 of many', () => {
  const ticks = range => [1, 2, 3, 5, 10, 50, 100].filter(value => isLogTick(value, range));
  same(ticks({ min: 1, max: 100 }), [1, 2, 5, 10, 50, 100]);
  same(ticks({ min: 0.1, max: 1000 }), [1, 10, 100]);
});

spec('draws a change too small to matter as small', () => {
  const { min, max } = rangeAround([99, 101], 0.25);
  same(max - min > 25, true);
});
