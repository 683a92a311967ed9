import { fontOf, paintOf } from './paint.js';
import { write } from './write.js';

/** Room between two lines, in halves of a line. */
const ROOM_BESIDE = 0.6;

/**
 * Plug-in: a short line at each level's median with its value before it, where there is room. Option `medians`:
 * `[{x, y, text, low, high}]`; low and high, where there are, end an upright line for the median's interval.
 */
export const medianLines = {
  id: 'medianLines',

  beforeDatasetsDraw(chart, _, { medians = [], reach = 0 }) {
    const { ctx, scales } = chart;
    const paint = paintOf(chart.canvas);
    const half = Math.abs(scales.x.getPixelForValue(scales.x.min + reach) - scales.x.getPixelForValue(scales.x.min));
    ctx.save();
    for (const { x, y, text, low, high } of medians) {
      if (low != null) drawInterval(ctx, scales, { x, low, high, half }, paint);
      drawMedian(ctx, { x: scales.x.getPixelForValue(x), y: scales.y.getPixelForValue(y), half, text }, paint);
    }
    ctx.restore();
  },
};

function drawInterval(ctx, scales, { x, low, high, half }, paint) {
  const at = scales.x.getPixelForValue(x) + half;
  ctx.strokeStyle = paint.soft;
  ctx.lineWidth = 2;
  ctx.beginPath();
  for (const value of [low, high]) {
    ctx.moveTo(at - paint.size / 4, scales.y.getPixelForValue(value));
    ctx.lineTo(at + paint.size / 4, scales.y.getPixelForValue(value));
  }
  ctx.moveTo(at, scales.y.getPixelForValue(low));
  ctx.lineTo(at, scales.y.getPixelForValue(high));
  ctx.stroke();
}

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
