import { decimalsFor } from '../core/format.js';
import { shown } from '../core/ranked.js';

/** The decimals of the whole column: those that the uncertainty of the middle team justifies. */
export function commonDecimals(teams) {
  const figures = teams.map(team => team.figure).filter(figure => figure?.standardUncertainty > 0);
  const decimals = figures.map(figure => decimalsFor(shown(figure).standardUncertainty)).sort((a, b) => a - b);
  return decimals[Math.floor((decimals.length - 1) / 2)] ?? 0;
}
