/** A spectrum as a small drawing: wavelength to the right, power per nanometre upwards, the visible colours as a strip below. */
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, svg } from '../kit/kit.js';

const [WIDTH, HEIGHT, SIDE, TOP, STRIP, FOOT] = [320, 150, 12, 8, 6, 22];
const FLOOR = HEIGHT - FOOT - STRIP;

/** Where the eye sees which colour, in nm (common practice, no source). */
const COLOURS = [[380, '#3b0a6b'], [440, '#2626c8'], [490, '#1593c4'], [530, '#1f9d3a'], [580, '#e0c61b'], [620, '#dd7a18'], [680, '#b3151f'], [760, '#5c0a12']];
const VISIBLE = [COLOURS[0][0], COLOURS.at(-1)[0]];
const FEWEST_TICKS = 3;
const STEPS = [500, 200, 100, 50];

/** @param outline [{nm, share}] in rising order, two at least */
export function spectrumPlot(outline) {
  const [from, to] = [outline[0].nm, outline.at(-1).nm];
  const across = nm => SIDE + (nm - from) / (to - from) * (WIDTH - 2 * SIDE);
  const line = outline.map(({ nm, share }) => `${across(nm).toFixed(1)},${(FLOOR - share * (FLOOR - TOP)).toFixed(1)}`);
  const peak = outline.reduce((a, b) => (b.share > a.share ? b : a));
  const [left, right] = [Math.max(from, VISIBLE[0]), Math.min(to, VISIBLE[1])];
  return html`<figure class="spectrum"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img"
      aria-label=${t('page.light.spectrum.picture', { from: plain(Math.round(from)), to: plain(Math.round(to)), peak: plain(Math.round(peak.nm)) })}>
      <defs><linearGradient id="visible" gradientUnits="userSpaceOnUse" x1=${across(VISIBLE[0])} x2=${across(VISIBLE[1])}>
        ${COLOURS.map(([nm, colour]) => svg`<stop offset=${(nm - VISIBLE[0]) / (VISIBLE[1] - VISIBLE[0])} stop-color=${colour}/>`)}</linearGradient></defs>
      <polygon points="${across(from)},${FLOOR} ${line.join(' ')} ${across(to)},${FLOOR}"/>
      <polyline points=${line.join(' ')}/>
      <path class="axes" d="M${SIDE} ${FLOOR}H${WIDTH - SIDE}"/>
      <rect x=${across(left)} y=${FLOOR + 1} width=${Math.max(0, across(right) - across(left))} height=${STRIP} fill="url(#visible)"/>
      ${ticks(from, to).map(nm => svg`<text x=${across(nm)} y=${HEIGHT - 5} text-anchor="middle">${nm}</text>`)}
    </svg><figcaption class="soft small">${t('page.light.spectrum.caption')}</figcaption></figure>`;
}

/** Round wavelengths, three at least where the band allows. */
export function ticks(from, to) {
  const at = step => Array.from({ length: Math.floor(to / step) - Math.ceil(from / step) + 1 }, (_, i) => (Math.ceil(from / step) + i) * step);
  return at(STEPS.find(step => at(step).length >= FEWEST_TICKS) ?? STEPS.at(-1));
}
