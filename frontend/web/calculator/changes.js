/** What is different from the numbers one began with, in words. */
import { shownNumber } from '../core/format.js';
import { t } from '../core/texts.js';
import { unitOf, symbolOf } from '../entry/wording.js';
import { TYPED } from './address.js';

/** The keys in which two tries differ, of those that a view asks for. */
export function changedKeys(start, tried, keys) {
  return keys.filter(key => (TYPED.includes(key) ? textOf(start[key]) !== textOf(tried[key])
    : JSON.stringify(start[key]) !== JSON.stringify(tried[key])));
}

const textOf = value => (value?.text?.trim() ? `${value.text.trim()} ${value.unit}` : '');

/** "You changed: area of the film (4.0 cm² → 2.0 cm²)." Empty when nothing was. */
export function changeSentence(start, tried, keys, units) {
  const changed = changedKeys(start, tried, keys);
  if (changed.length === 0) return '';
  const list = changed.map(key => changeWords(key, start, tried, units)).join(', ');
  return t('page.calculator.changed', { list });
}

function changeWords(key, start, tried, units) {
  const name = t(`page.calculator.short.${key}`);
  const [from, to] = [start, tried].map(each => shown(key, each, units));
  return from && to ? t('page.calculator.fromTo', { name, from, to }) : name;
}

function shown(key, tried, units) {
  if (TYPED.includes(key)) return typedWords(tried[key], units);
  if (key === 'lamp' || key === 'instrument') return t(`catalogue.${key}.${tried[key]}`);
  return key === 'dye' ? t(`page.calculator.dye.${tried.dye}`) : '';
}

function typedWords({ text, unit }, units) {
  if (text.trim() === '') return t('page.calculator.nothing');
  const own = /[^\d\s.,eE+\u2212-]/.test(text);
  return own ? text.trim() : `${text.trim()} ${symbolOf(unitOf(unit, units))}`.trim();
}

/** How a figure moved: "Power went up from 41 to 63 µW." The same digits count as no change. */
export function moveSentence(name, before, now, unit) {
  if (before === now) return t('page.calculator.stayed', { name, now, unit });
  return t(shownNumber(now) > shownNumber(before) ? 'page.calculator.rose' : 'page.calculator.fell', { name, before, now, unit });
}
