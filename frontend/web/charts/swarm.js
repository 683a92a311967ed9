/**
 * Moves the dots of one column sideways until none covers another, the same way every time. A dot is a box, so that the
 * label beside it keeps its room.
 *
 * @param {number[]} heights where the dots stand, in pixels
 * @param {{width: number, height: number}} box room that a dot with its label needs, in pixels
 * @param {number} reach furthest a dot may be moved, in pixels; a crowded column overlaps rather than leave it
 * @returns {number[]} a sideways shift for each height, in the order given
 */
export function offsets(heights, box, reach) {
  const placed = [];
  const order = heights.map((_, index) => index).sort((a, b) => heights[a] - heights[b] || a - b);
  for (const index of order) placed[index] = { x: freeShift(heights[index], placed, box, reach), y: heights[index] };
  return placed.map(({ x }) => x);
}

function freeShift(y, placed, { width, height }, reach) {
  const isFree = x => placed.every(dot => Math.abs(dot.x - x) >= width - 0.01 || Math.abs(dot.y - y) >= height - 0.01);
  return candidateShifts(width / 2, reach).find(isFree) ?? 0;
}

/** 0, then one step right, one left, two right ... as far as `reach`. */
function candidateShifts(step, reach) {
  const steps = Array.from({ length: Math.max(0, Math.floor(reach / step)) }, (_, index) => (index + 1) * step);
  return [0, ...steps.flatMap(shift => [shift, -shift])];
}
