/** The only door to Chart.js, with the few parts of it that are used. */
import { Chart, LinearScale, LineElement, LogarithmicScale, PointElement, ScatterController } from 'chart.js';
import { NUMBERS } from '../core/language.js';

Chart.register(LinearScale, LogarithmicScale, LineElement, PointElement, ScatterController);
Chart.defaults.locale = NUMBERS;

export { Chart };

/**
 * Names a canvas for people who do not see it; the page carries the same data as a table.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {string} sentence what the picture shows, in one sentence
 */
export function describe(canvas, sentence) {
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', sentence);
}

/** Draws again when the page turns dark or light; the answer ends it. */
export function onThemeChange(action) {
  const scheme = matchMedia('(prefers-color-scheme: dark)');
  const root = new MutationObserver(action);
  root.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  scheme.addEventListener('change', action);
  return () => {
    root.disconnect();
    scheme.removeEventListener('change', action);
  };
}
