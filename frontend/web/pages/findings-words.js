import { plain } from '../core/format.js';
import { t } from '../core/texts.js';

/** Words for one finding: how its levels and sentences read. `units` are the catalogue's. */
export function wordsFor(finding, units) {
  const symbol = units.find(unit => unit.key === finding.unit)?.symbols[0] ?? '';
  const withUnit = number => (symbol ? `${plain(Number(number))} ${symbol}` : plain(Number(number)));
  const level = key => (finding.kind === 'number' ? withUnit(key) : t(`catalogue.level.${finding.parameter}.${key}`));
  return {
    level,
    symbol,
    sentence: ({ key, values }) => t(key, spoken(values ?? {}, level)),
    parameter: t(`catalogue.parameter.${finding.parameter}`),
  };
}

/** Values whose name ends in `Level` are levels of the parameter and read like those of the dots. */
function spoken(values, level) {
  const entries = Object.entries(values);
  return Object.fromEntries(entries.map(([name, value]) => [name, /Level$/.test(name) ? level(value) : value]));
}
