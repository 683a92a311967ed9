import { fontOf, paintOf } from './paint.js';
import { hasLabels } from './sideways.js';
import { write } from './write.js';

/** Plug-in: each point's `label` to the right of its mark, where there is room for it. */
export const cellLabels = {
  id: 'cellLabels',

  afterDatasetsDraw(chart) {
    if (!hasLabels(chart)) return;
    const paint = paintOf(chart.canvas);
    chart.ctx.save();
    chart.ctx.font = fontOf(paint, 0.8);
    chart.ctx.textBaseline = 'middle';
    chart.data.datasets.forEach((dataset, index) => {
      chart.getDatasetMeta(index).data.forEach((element, at) => {
        write(chart.ctx, dataset.data[at].label, element.x + paint.size * 0.62, element.y, paint);
      });
    });
    chart.ctx.restore();
  },
};
