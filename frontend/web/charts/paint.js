/**
 * The page's colours and type as a canvas needs them; read anew at each drawing, so a change of theme is followed.
 *
 * @param {HTMLElement} element whose style counts
 */
export function paintOf(element) {
  const style = getComputedStyle(element);
  const read = name => style.getPropertyValue(name).trim();
  return {
    ink: read('--ink'),
    soft: read('--soft'),
    line: read('--line'),
    act: read('--berry'),
    now: read('--now'),
    ground: read('--plot') || read('--glass'),
    dark: style.colorScheme.includes('dark'),
    family: style.fontFamily,
    size: parseFloat(style.fontSize),
  };
}

/** A font for the canvas, `scale` times the size of the page's text round the chart. */
export function fontOf(paint, scale = 1, weight = 400) {
  return `${weight} ${paint.size * scale}px ${paint.family}`;
}
