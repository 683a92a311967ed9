import { fontOf, paintOf } from './paint.js';
import { write } from './write.js';

const LINE = 1.6;
const SAMPLE = 2;

/** Plug-in: what the lines stand for, above the picture. Option `entries` {text, colour, dash}. */
export const lineKey = {
  id: 'lineKey',

  afterDatasetsDraw({ ctx, canvas, chartArea, width }, _, { entries }) {
    const paint = paintOf(canvas);
    ctx.save();
    ctx.font = fontOf(paint, 0.9, 600);
    ctx.textBaseline = 'middle';
    placed(ctx, entries, paint, chartArea.left, width).forEach(({ text, colour, dash, x, row }) => {
      const y = paint.size * LINE * (row + 0.5);
      sample(ctx, x, y, paint.size * SAMPLE, { colour, dash, width: paint.size / 7 });
      write(ctx, text, x + paint.size * (SAMPLE + 0.6), y, paint);
    });
    ctx.restore();
  },
};

/** How much room above the picture it takes, in pixels. */
export function keyHeight(canvas, entries, paint) {
  const ctx = canvas.getContext('2d');
  ctx.save();
  ctx.font = fontOf(paint, 0.9, 600);
  const rows = placed(ctx, entries, paint, paint.size * 3, canvas.clientWidth).map(({ row }) => row);
  ctx.restore();
  return paint.size * LINE * (Math.max(-1, ...rows) + 1);
}

/** One after another from the left, a new row where there is no room. */
function placed(ctx, entries, { size }, left, width) {
  let x = left;
  let row = 0;
  return entries.map(entry => {
    const room = ctx.measureText(entry.text).width + size * (SAMPLE + 2);
    if (x > left && x + room > width) {
      x = left;
      row++;
    }
    const here = { ...entry, x, row };
    x += room;
    return here;
  });
}

function sample(ctx, x, y, length, { colour, dash, width }) {
  ctx.beginPath();
  ctx.setLineDash(dash);
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  ctx.moveTo(x, y);
  ctx.lineTo(x + length, y);
  ctx.stroke();
  ctx.setLineDash([]);
}
