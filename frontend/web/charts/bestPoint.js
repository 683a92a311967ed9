import { fontOf, paintOf } from './paint.js';
import { write } from './write.js';

/**
 * Plug-in: the greatest power as the largest rectangle under the curve, with a disc at its corner and its `text` inside.
 * Options `best` {x, y} or null.
 */
export const bestPoint = {
  id: 'bestPoint',

  beforeDatasetsDraw(chart, _, { best }) {
    if (!best) return;
    const { ctx, scales: { x, y } } = chart;
    ctx.save();
    ctx.fillStyle = paintOf(chart.canvas).now;
    ctx.fillRect(x.getPixelForValue(0), y.getPixelForValue(best.y), x.getPixelForValue(best.x) - x.getPixelForValue(0),
      y.getPixelForValue(0) - y.getPixelForValue(best.y));
    ctx.restore();
  },

  afterDatasetsDraw(chart, _, { best, text }) {
    if (!best) return;
    const { ctx, scales } = chart;
    const paint = paintOf(chart.canvas);
    const [x, y] = [scales.x.getPixelForValue(best.x), scales.y.getPixelForValue(best.y)];
    ctx.save();
    disc(ctx, x, y, paint);
    inside(ctx, text, { x, y, left: scales.x.getPixelForValue(0), bottom: scales.y.getPixelForValue(0) }, paint);
    ctx.restore();
  },
};

function disc(ctx, x, y, paint) {
  ctx.beginPath();
  ctx.arc(x, y, paint.size * 0.4, 0, 2 * Math.PI);
  ctx.fillStyle = paint.act;
  ctx.fill();
  ctx.strokeStyle = paint.ground;
  ctx.lineWidth = 2;
  ctx.stroke();
}

/** In the middle of the rectangle where it has room, else above its corner. */
function inside(ctx, text, { x, y, left, bottom }, paint) {
  ctx.font = fontOf(paint, 0.95, 650);
  ctx.textBaseline = 'middle';
  const { width } = ctx.measureText(text);
  if (x - left > width + paint.size && bottom - y > paint.size * 2.5) {
    ctx.textAlign = 'center';
    ctx.fillStyle = paint.ink;
    ctx.fillText(text, (left + x) / 2, (y + bottom) / 2);
  } else {
    ctx.textAlign = 'left';
    write(ctx, text, x + paint.size * 0.7, y, paint);
  }
}
