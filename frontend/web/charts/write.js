/** Text in ink with a halo in the ground colour. */
export function write(context, text, x, y, paint) {
  context.lineJoin = 'round';
  context.strokeStyle = paint.ground;
  context.lineWidth = 4;
  context.strokeText(text, x, y);
  context.fillStyle = paint.ink;
  context.fillText(text, x, y);
}
