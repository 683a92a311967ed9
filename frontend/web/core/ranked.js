/** What cells and teams are ranked by, {value, unit, standardUncertainty, low, high}, as people read it. */
import { figureTexts, plain } from './format.js';
import { t } from './texts.js';
import { MICROWATT_PER_CM2 } from './units.js';

/** How a figure in a unit of the server is shown: how large one of the shown units is, and its symbol. */
const SHOWN = {
  Wm2: { scale: MICROWATT_PER_CM2, symbol: 'µW/cm²' },
  Am2: { scale: 0.01, symbol: 'µA/cm²' },
  V: { scale: 1e-3, symbol: 'mV' },
  part: { scale: 0.01, symbol: '%' },
  times: { scale: 1, symbol: t('page.wall.unit.ratioToControl') },
};

/** As texts {value, low, high, unit}; what is known for certain, as the control cell's ratio to itself, needs no decimals. */
export function rankedTexts(figure) {
  const { scale, symbol } = SHOWN[figure.unit];
  if (figure.standardUncertainty > 0) return figureTexts(figure, scale, symbol);
  const { value, low, high } = shown(figure);
  return { value: plain(value), low: plain(low), high: plain(high), unit: symbol };
}

/** The same figure with its numbers in the shown unit, to be drawn. */
export function shown({ value, unit, standardUncertainty, low, high }) {
  const { scale } = SHOWN[unit];
  return { value: value / scale, standardUncertainty: standardUncertainty / scale, low: low / scale, high: high / scale };
}
