import { plain } from '../core/format.js';

/** What was typed as number and unit; a unit inside the text wins over the one chosen beside it. */
export function typedParts({ text, unit }, units) {
  const [, number, own] = /^([\d.,\s]*)(.*)$/.exec(text.trim());
  const meant = units.find(each => (own === '' ? each.key === unit : each.symbols.includes(own)));
  return { number: number.trim(), unit: meant?.symbols[0] ?? own };
}

/** What was typed as one text: "5400 lx". */
export const typedText = (typed, units) => Object.values(typedParts(typed, units)).join(' ').trim();

export const threeDigits = value => plain(Number(value.toPrecision(3)));
