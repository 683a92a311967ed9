import { paintOf } from './paint.js';
import { offsets } from './swarm.js';

/** Room for a mark with its label beside it, and for a mark alone, in the size of the page's text. */
const LABELLED = { width: 2.7, height: 1.15 };
const BARE = { width: 1.1, height: 1.1 };

/** With more dots than this, labels would cover each other. */
const MOST_LABELS = 60;

/** Whether a level has the room for labels beside its dots: two of them next to each other. */
export function hasLabels(chart) {
  const { reach = 0 } = chart.options.plugins.sideways;
  const dots = chart.data.datasets.reduce((count, { data }) => count + data.length, 0);
  return dots <= MOST_LABELS && 2 * reachOf(chart, reach) >= 2 * LABELLED.width * paintOf(chart.canvas).size;
}

/** Plug-in: moves dots that share a column apart. Options `reach`: half the room of a level, in units of the axis; `scale` of a dot. */
export const sideways = {
  id: 'sideways',

  afterDatasetsUpdate(chart, _, { reach = 0, scale = 1 }) {
    const size = scale * paintOf(chart.canvas).size;
    const labelled = hasLabels(chart);
    const room = labelled ? LABELLED : BARE;
    const box = { width: room.width * size, height: room.height * size };
    const shift = labelled ? (LABELLED.width - BARE.width) * size / 2 : 0;
    for (const { elements } of columns(chart)) spread(elements, box, reachOf(chart, reach), shift);
  },
};

function spread(elements, box, reach, shift) {
  const moves = offsets(elements.map(element => element.y), box, Math.max(0, reach - box.width / 2));
  elements.forEach((element, at) => { element.x += moves[at] - shift; });
}

/** The dots of one data set that share an x. */
function columns(chart) {
  return chart.data.datasets.flatMap((dataset, index) => {
    const { data } = chart.getDatasetMeta(index);
    const xs = [...new Set(dataset.data.map(point => point.x))];
    return xs.map(x => ({ elements: data.filter((_, at) => dataset.data[at].x === x) }));
  });
}

/** `reach` in units of the axis, in pixels. */
function reachOf({ scales: { x } }, reach) {
  return Math.abs(x.getPixelForValue(x.min + reach) - x.getPixelForValue(x.min));
}
