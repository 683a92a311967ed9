import { fontOf, paintOf } from './paint.js';
import { write } from './write.js';

/** Room between two lines, in halves of a line. */
const ROOM_BESIDE = 0.6;

/** Plug-in: a short line at each level's median with its value before it, where there is room. Option `medians`: `[{x, y, text}]`. */
export const medianLines = {
  id: 'medianLines',

  beforeDatasetsDraw(chart, _, { medians = [], reach = 0 }) {
    const { ctx, scales } = chart;
    const paint = paintOf(chart.canvas);
    const half = Math.abs(scales.x.getPixelForValue(scales.x.min + reach) - scales.x.getPixelForValue(scales.x.min));
    ctx.save();
    for (const { x, y, text } of medians) {
      drawMedian(ctx, { x: scales.x.getPixelForValue(x), y: scales.y.getPixelForValue(y), half, text }, paint);
    }
    ctx.restore();
  },
};

function drawMedian(ctx, { x, y, half, text }, paint) {
  ctx.strokeStyle = paint.ink;
  ctx.lineWidth = 3;
  ctx.beginPath();
  ctx.moveTo(x - half, y);
  ctx.lineTo(x + half, y);
  ctx.stroke();
  ctx.font = fontOf(paint, 0.85, 700);
  if (ctx.measureText(text).width > half * ROOM_BESIDE) return;
  ctx.textAlign = 'right';
  ctx.textBaseline = 'middle';
  write(ctx, text, x - half - paint.size / 3, y, paint);
}
