import { drawFailure } from './drawFailure.js';
import { drawMark } from './drawMark.js';
import { paintOf } from './paint.js';

/** Plug-in: draws each point `{mark, failed}` as its team's mark, or as a failure. */
export const teamMarks = {
  id: 'teamMarks',

  afterDatasetsDraw(chart, _, { radius = 0.6 }) {
    const paint = paintOf(chart.canvas);
    chart.data.datasets.forEach((dataset, index) => {
      chart.getDatasetMeta(index).data.forEach((element, at) => {
        const place = { ...element.getProps(['x', 'y']), radius: radius * paint.size };
        draw(chart.ctx, dataset.data[at], place, paint);
      });
    });
  },
};

function draw(context, { mark, failed }, place, paint) {
  if (failed) drawFailure(context, place, paint);
  else if (mark != null) drawMark(context, mark, place, paint);
}
