/**
 * A team's mark: one of eight shapes and one of eight colours that people with any kind of colour vision tell apart
 * (Okabe and Ito, "Color Universal Design", 2008). The eighth is drawn in the ink of the page. From the ninth team on
 * colours meet other shapes, so that shape and colour together stay the team's own.
 */
const COLOURS = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#56b4e9', '#e69f00', '#f0e442', null];

/** Outlines in a box from -12 to 12, filled; thick enough to be told apart from the back of a room. */
const OUTLINES = {
  disc: 'M9.5 0A9.5 9.5 0 1 1 -9.5 0A9.5 9.5 0 1 1 9.5 0Z',
  saltire: 'M5.3 -9.5L9.5 -5.3L4.2 0L9.5 5.3L5.3 9.5L0 4.2L-5.3 9.5L-9.5 5.3L-4.2 0L-9.5 -5.3L-5.3 -9.5L0 -4.2Z',
  cross: 'M-3 -10.5L3 -10.5L3 -3L10.5 -3L10.5 3L3 3L3 10.5L-3 10.5L-3 3L-10.5 3L-10.5 -3L-3 -3Z',
  star: 'M0 -10.7L2.9 -3.2L10.9 -2.8L4.7 2.3L6.8 10.1L0 5.7L-6.8 10.1L-4.7 2.3L-10.9 -2.8L-2.9 -3.2Z',
  diamond: 'M0 -11L11 0L0 11L-11 0Z',
  triangle: 'M0 -10.5L11 8.5L-11 8.5Z',
  square: 'M-8.5 -8.5L8.5 -8.5L8.5 8.5L-8.5 8.5Z',
  dash: 'M-11 -4.5L11 -4.5L11 4.5L-11 4.5Z',
};

const SHAPES = Object.keys(OUTLINES);

/** Half the box in which the outlines are drawn. */
export const MARK_BOX = 12;

/**
 * @param {number} index the team's mark: 0, 1, 2 ...
 * @returns {{shape: string, outline: string, colour: ?string}} colour null: the page's ink
 */
export function markOf(index) {
  const round = Math.floor(index / SHAPES.length);
  const shape = SHAPES[(index + round) % SHAPES.length];
  return { shape, outline: OUTLINES[shape], colour: COLOURS[index % COLOURS.length] };
}
