import { offsets } from '/charts/swarm.js';
import { same, spec } from './spec.js';

const BOX = { width: 10, height: 8 };

spec('leaves dots where they are when none covers another', () => same(offsets([0, 20, 40], BOX, 50), [0, 0, 0]));

spec('moves equal dots apart, one to each side in turn', () => same(offsets([5, 5, 5], BOX, 50), [0, 10, -10]));

spec('places the same dots the same way in any order of arrival', () => {
  const there = offsets([5, 30, 9], BOX, 50);
  same(offsets([30, 9, 5], BOX, 50), [there[1], there[2], there[0]]);
});

spec('keeps a dot within reach even if it must cover another', () => same(offsets([5, 5, 5, 5], BOX, 10), [0, 10, -10, 0]));
