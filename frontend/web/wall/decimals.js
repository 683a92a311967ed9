import { decimalsFor } from '../core/format.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';

/** The decimals of the whole column: those that the uncertainty of the middle team justifies. */
export function commonDecimals(teams) {
  const figures = teams.map(team => team.powerDensityWm2).filter(Boolean);
  const decimals = figures.map(figure => decimalsFor(figure.standardUncertainty / MICROWATT_PER_CM2)).sort((a, b) => a - b);
  return decimals[Math.floor((decimals.length - 1) / 2)] ?? 0;
}
