import { paintOf } from './paint.js';

/**
 * Plug-in: the 95 % interval of each point as a horizontal line behind it. A point is `{x, y, low, high}`; one without
 * an interval gets none. The line travels with its point while that moves.
 */
export const whiskers = {
  id: 'whiskers',

  beforeDatasetsDraw(chart) {
    const paint = paintOf(chart.canvas);
    chart.data.datasets.forEach((dataset, index) => {
      chart.getDatasetMeta(index).data.forEach((element, at) => {
        drawWhisker(chart, element, dataset.data[at], paint);
      });
    });
  },
};

function drawWhisker({ ctx, scales, chartArea }, element, { x, low, high }, paint) {
  if (low == null || high == null) return;
  const { x: atX, y } = element.getProps(['x', 'y']);
  const pixel = value => atX + scales.x.getPixelForValue(value) - scales.x.getPixelForValue(x);
  const from = Math.max(chartArea.left, pixel(low));
  const to = Math.min(chartArea.right, pixel(high));
  const width = paint.size / 7;
  ctx.save();
  ctx.strokeStyle = paint.soft;
  ctx.lineWidth = width;
  ctx.lineCap = 'round';
  line(ctx, from, y, to, y);
  line(ctx, from, y - width * 2, from, y + width * 2);
  line(ctx, to, y - width * 2, to, y + width * 2);
  ctx.restore();
}

function line(ctx, fromX, fromY, toX, toY) {
  ctx.beginPath();
  ctx.moveTo(fromX, fromY);
  ctx.lineTo(toX, toY);
  ctx.stroke();
}
