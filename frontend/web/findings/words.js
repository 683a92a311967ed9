import { plain } from '../core/format.js';
import { t } from '../core/texts.js';

/** Words for a day's findings: how parameters, levels and sentences read. `units` are the catalogue's. */
export function wordsFor({ units: used, study }, units) {
  const symbols = new Map(used.map(({ parameter, unit }) => [parameter, units.find(({ key }) => key === unit)?.symbols[0] ?? '']));
  const numbers = new Set(study.parameters.filter(({ kind }) => kind === 'number').map(({ parameter }) => parameter));
  const symbol = parameter => symbols.get(parameter) ?? '';
  const level = (parameter, key) => (numbers.has(parameter) ? number(key, symbol(parameter)) : t(`catalogue.level.${parameter}.${key}`));
  return {
    level,
    symbol,
    parameter: key => t(`catalogue.parameter.${key}`),
    sentence: ({ key, values }, about) => t(key, spoken(values ?? {}, about, level)),
  };
}

/** Also a range of numbers, which stands for many: "350…400". */
function number(key, symbol) {
  const shown = key.split('…').map(each => plain(Number(each))).join(' – ');
  return symbol ? `${shown} ${symbol}` : shown;
}

/** Parameters by their name; a level belongs to the parameter whose name begins alike, or else to the one spoken about. */
function spoken(values, about, level) {
  const say = (name, value) => {
    if (name.endsWith('Parameter')) return t(`catalogue.parameter.${value}`);
    if (!/Level$/.test(name)) return value;
    const owner = Object.keys(values).find(each => each.endsWith('Parameter') && name.startsWith(each.slice(0, -'Parameter'.length)));
    return level(owner ? values[owner] : about, value);
  };
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, say(name, value)]));
}
