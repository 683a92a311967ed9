/** A ring with a bar across: a cell that was made and did not come through. */
export function drawFailure(context, { x, y, radius }, paint) {
  const reach = radius * Math.SQRT1_2;
  context.save();
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.moveTo(x - reach, y + reach);
  context.lineTo(x + reach, y - reach);
  for (const [colour, width] of [[paint.ground, 5], [paint.ink, 2]]) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.stroke();
  }
  context.restore();
}
