/** Text in ink on a patch of the ground, so that no line runs through it. */
export function write(context, text, x, y, paint) {
  const { width, actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } = context.measureText(text);
  const left = context.textAlign === 'right' ? x - width : x;
  context.fillStyle = paint.ground;
  context.fillRect(left - 2, y - above - 1, width + 4, above + below + 2);
  context.fillStyle = paint.ink;
  context.fillText(text, x, y);
}
