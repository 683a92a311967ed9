import { MARK_BOX, markOf } from '../core/marks.js';

/**
 * Draws a team's mark with a halo in the ground colour, so that a line behind it does not blur its shape; on a light
 * ground a dark edge carries the pale colours.
 */
export function drawMark(context, mark, { x, y, radius }, paint) {
  const { outline, colour } = markOf(mark);
  const path = new Path2D(outline);
  context.save();
  context.translate(x, y);
  context.scale(radius / MARK_BOX, radius / MARK_BOX);
  context.lineJoin = 'round';
  stroke(context, path, paint.ground, 6);
  if (!paint.dark) stroke(context, path, paint.ink, 3.2);
  context.fillStyle = colour ?? paint.ink;
  context.fill(path);
  context.restore();
}

function stroke(context, path, colour, width) {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke(path);
}
