import { setAsideReason } from '../bench/words.js';
import { drawDrift } from '../charts/drift.js';
import { serverClock } from '../core/clock.js';
import { clock, plain } from '../core/format.js';
import { t } from '../core/texts.js';

const drawn = new WeakMap();

/** The readings of a station that still stand, oldest first. */
export const standing = station => byTime(station.readings.filter(reading => !reading.replacedBy && !setAsideReason(reading)));

/** Oldest first by when the light was read: a correction was written later than it counts for. */
export const byTime = readings => [...readings].sort((one, other) => Date.parse(one.readAt) - Date.parse(other.readAt));

/** Draws a station's light over time where its card has a canvas. */
export function drawStationDrift(station) {
  const canvas = document.querySelector(`canvas[data-station="${station.id}"]`);
  if (!canvas) return;
  if (!drawn.has(canvas)) drawn.set(canvas, drawDrift(canvas));
  const readings = standing(station).map(({ readAt, totalIrradianceWm2: { value } }) => ({ at: Date.parse(readAt), value }));
  drawn.get(canvas).show({ readings, now: serverClock.now(), clock, sentence: sentenceOf(station, readings) });
}

function sentenceOf({ name }, readings) {
  const [first, last] = [readings[0], readings.at(-1)];
  return t('page.light.picture', {
    name, count: readings.length, first: plain(first.value), last: plain(last.value), from: clock(first.at), to: clock(last.at),
  });
}
