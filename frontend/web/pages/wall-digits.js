const FIGURE_SPACE = '\u2007';
const POINT_SPACE = '\u2008';

/** What to put behind a number of `decimals` so that its point stands under that of one with `longest` decimals. */
export function pointPadding(decimals, longest) {
  return (decimals === 0 && longest > 0 ? POINT_SPACE : '') + FIGURE_SPACE.repeat(longest - decimals);
}
