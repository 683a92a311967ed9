import { day as dateWords } from '../core/format.js';
import { ruleWords } from '../core/rule.js';

/** The days that have every typed word in their title, their date or what they compare by. */
export function found(days, typed, words = wordsOf) {
  const wanted = fold(typed).split(/\s+/).filter(Boolean);
  return days.filter(day => wanted.every(word => fold(words(day)).includes(word)));
}

const wordsOf = day => `${day.title} ${day.date} ${dateWords(day.date)} ${ruleWords(day.rule)}`;

/** Without accents and capitals, so that "zurich" finds "Zürich". */
const fold = text => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
