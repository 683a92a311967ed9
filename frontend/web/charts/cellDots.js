import { drawFailure } from './drawFailure.js';
import { paintOf } from './paint.js';

/**
 * Plug-in: the single cells behind a team's figure. A point's `cells` are values; a failed cell is null and stands at
 * zero, where the axis begins, since that is what it counts for.
 */
export const cellDots = {
  id: 'cellDots',

  beforeDatasetsDraw(chart) {
    const paint = paintOf(chart.canvas);
    chart.data.datasets.forEach((dataset, index) => {
      chart.getDatasetMeta(index).data.forEach((element, at) => {
        drawCells(chart, element.getProps(['y']).y, dataset.data[at].cells ?? [], paint);
      });
    });
  },
};

function drawCells({ ctx, scales }, y, cells, paint) {
  const radius = paint.size * 0.24;
  const failed = cells.filter(value => value === null);
  failed.forEach((_, index) => {
    drawFailure(ctx, { x: scales.x.getPixelForValue(0) + index * radius * 1.3, y, radius }, paint);
  });
  for (const value of cells) if (value !== null) ring(ctx, scales.x.getPixelForValue(value), y, radius, paint);
}

function ring(ctx, x, y, radius, paint) {
  ctx.beginPath();
  ctx.arc(x, y, radius, 0, 2 * Math.PI);
  ctx.fillStyle = paint.ground;
  ctx.fill();
  ctx.strokeStyle = paint.soft;
  ctx.lineWidth = paint.size / 14;
  ctx.stroke();
}
