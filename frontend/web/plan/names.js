/** Names of what a plan varies: the catalogue's, or the class's own. */
import { fixed, plain } from '../core/format.js';
import { has, t } from '../core/texts.js';
import { unitOf } from '../entry/wording.js';

const FACTORS = new Set(['factor', 'other', 'third']);

export const parameterName = key => (has(`catalogue.parameter.${key}`) ? t(`catalogue.parameter.${key}`) : key);

/** A level in words: "Beetroot", "450 °C", or the class's own words. */
export function levelWords({ parameter, text, unit }, { units }) {
  const known = `catalogue.level.${parameter}.${text}`;
  if (has(known)) return t(known);
  return unit ? `${text} ${unitOf(unit, units)?.symbols[0] ?? ''}`.trim() : text;
}

/** A sentence of the plan; ratios with two significant digits. */
export function sentence({ key, values }) {
  const shown = Object.entries(values).map(([name, value]) => [name, FACTORS.has(name) ? parameterName(value) : name === 'smallest' ? ratio(value) : value]);
  return t(key, Object.fromEntries(shown));
}

/** 2.264 -> "2.3", 12.7 -> "13". */
export const ratio = value => (value < 9.95 ? fixed(value, 1) : plain(Math.round(value)));

export const percent = share => `${Math.round(100 * share)} %`;

/** Minutes from the start as "2:05". */
export const hours = minutes => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;

/** What a planned team is called: its name once it has joined, its number before. */
export function teamName(team, cells) {
  const name = cells.find(cell => cell.team === team)?.teamName;
  return team === 0 ? t('page.plan.classCells') : name ?? t('page.plan.team', { number: team });
}
