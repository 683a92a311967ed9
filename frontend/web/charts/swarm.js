/**
 * Moves dots of one column sideways until none covers another, the same way every time: `offsets` answers one
 * sideways shift for each height, in the order given.
 *
 * @param {number[]} heights of the dots, in pixels
 * @param {number} spacing least distance between the middles of two dots, in pixels
 * @param {number} reach furthest a dot may be moved, in pixels; a crowded column overlaps rather than leave it
 */
export function offsets(heights, spacing, reach) {
  const placed = [];
  const order = heights.map((_, index) => index).sort((a, b) => heights[a] - heights[b] || a - b);
  for (const index of order) placed[index] = { x: freeShift(heights[index], placed, spacing, reach), y: heights[index] };
  return placed.map(({ x }) => x);
}

function freeShift(y, placed, spacing, reach) {
  const shifts = candidateShifts(spacing / 2, reach);
  return shifts.find((x) => placed.every((dot) => Math.hypot(dot.x - x, dot.y - y) >= spacing - 0.01)) ?? 0;
}

/** 0, then one step right, one left, two right ... as far as `reach`. */
function candidateShifts(step, reach) {
  const steps = Array.from({ length: Math.floor(reach / step) }, (_, index) => (index + 1) * step);
  return [0, ...steps.flatMap((shift) => [shift, -shift])];
}
