import { plain } from '../core/format.js';
import { has, t } from '../core/texts.js';
import { measureOf } from './measure.js';

/** Words for findings: how parameters, levels, values and sentences read. `units` are the catalogue's. */
export function wordsFor(findings, units) {
  const { units: used, study, outcome } = findings;
  const symbols = new Map(used.map(({ parameter, unit }) => [parameter, units.find(({ key }) => key === unit)?.symbols[0] ?? '']));
  const numbers = new Set(study.parameters.filter(({ kind }) => kind === 'number').map(({ parameter }) => parameter));
  const symbol = parameter => symbols.get(parameter) ?? '';
  const named = (key, otherwise) => (outcome == null && has(key) ? t(key) : otherwise);
  const parameter = key => named(`catalogue.parameter.${key}`, key);
  const level = (owner, key) => (numbers.has(owner) ? number(key, symbol(owner)) : named(`catalogue.level.${owner}.${key}`, key));
  const measure = measureOf(findings);
  return {
    level,
    symbol,
    parameter,
    measure,
    /** Two digits, as a reader keeps them. */
    value: si => plain(Number((si / measure.scale).toPrecision(2))),
    sentence: ({ key, values }, about) => t(outcome != null && has(`${key}.ofOutcome`) ? `${key}.ofOutcome` : key,
      { outcome, ...spoken(values ?? {}, about, { level, parameter }) }),
  };
}

/** Also a range of numbers, which stands for many: "350…400". */
function number(key, symbol) {
  const shown = key.split('…').map(each => plain(Number(each))).join(' – ');
  return symbol ? `${shown} ${symbol}` : shown;
}

/** Parameters by their name; a level belongs to the parameter whose name begins alike, or else to the one spoken about. */
function spoken(values, about, { level, parameter }) {
  const say = (name, value) => {
    if (name.endsWith('Parameter')) return parameter(value);
    if (!/Level$/.test(name)) return value;
    const owner = Object.keys(values).find(each => each.endsWith('Parameter') && name.startsWith(each.slice(0, -'Parameter'.length)));
    return level(owner ? values[owner] : about, value);
  };
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, say(name, value)]));
}
