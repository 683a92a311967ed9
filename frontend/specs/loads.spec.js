import { isEnough, nearPeak, nextLoad } from '/bench/loads.js';
import { same, spec } from './spec.js';

/** A cell whose curve is a straight line: Voc 0.4 V, Isc 1 mA; its power peaks at R = Voc/Isc = 400 Ω (linear source). */
const point = ohm => ({ ohm, voltageV: 0.4 * ohm / (ohm + 400), currentA: 0.4 / (ohm + 400) });
const sweep = steps => {
  const points = [];
  for (let step = 0; step < steps; step++) {
    const next = nextLoad(points, 400);
    if (next === null) break;
    points.push(point(next));
  }
  return points;
};

spec('begins next to Voc/Isc', () => same(nextLoad([], 390), 330));
spec('begins at 1 kΩ for a cell that nobody has read', () => same(nextLoad([], null), 1_000));
spec('looks round in half-decades first', () =>
  same(sweep(5).map(({ ohm }) => ohm), [330, 1_000, 100, 3_300, 33]));
spec('then takes the E6 values next to the best point', () =>
  same(sweep(8).slice(5).map(({ ohm }) => ohm).sort((a, b) => a - b), [220, 470, 680]));
spec('has enough after ten points, four of them near the peak', () => {
  const points = sweep(20);
  same(points.length, 10);
  same([isEnough(points), nearPeak(points) >= 4, nextLoad(points, 400)], [true, true, null]);
});
spec('follows the peak when the guess was a decade off', () => {
  const points = [33, 10, 100].map(point);
  same(nextLoad([...points, point(330), point(1_000)], 33), 470);
});
