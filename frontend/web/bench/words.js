/** Small wordings of the bench. */
import { clock, prefixed } from '../core/format.js';
import { language } from '../core/language.js';
import { t } from '../core/texts.js';
import { unitOf } from '../entry/wording.js';

const ORDINAL = new Intl.PluralRules(language, { type: 'ordinal' });

/** "3rd" */
export const place = number => t(`page.bench.place.${ORDINAL.select(number)}`, { place: number });

/** A reading in one line: "412 mV, 45 µA at 14:52". */
export function readingWords(reading, units) {
  const parts = reading.kind === 'sweep' ? [t('page.bench.points', { points: reading.points.length })]
    : reading.kind === 'toggles' ? openings(reading, units)
    : [amountWords(reading.voltageV, 'V', reading.voltage, units), amountWords(reading.currentA, 'A', reading.current, units), swappedWords(reading, units)];
  const sentence = parts.filter(Boolean).join(', ');
  return reading.readAt ? t('page.bench.readingAt', { reading: sentence, time: clock(reading.readAt) }) : sentence;
}

/** "leads swapped −3 mV, 0 A" where the leads were swapped: the zero lies in the middle of both ways. */
function swappedWords({ voltageV, currentA, meterZeroV, meterZeroA, swappedVoltage, swappedCurrent }, units) {
  const parts = [
    amountWords(meterZeroV == null ? null : 2 * meterZeroV - voltageV, 'V', swappedVoltage, units),
    amountWords(meterZeroA == null ? null : 2 * meterZeroA - currentA, 'A', swappedCurrent, units),
  ].filter(Boolean);
  return parts.length ? t('page.bench.leads.swapped', { reading: parts.join(', ') }) : null;
}

/** Who corrected an earlier reading by this one, when and why, or null. */
export function correctedWords({ readAt, acceptedAt, by, reason }) {
  if (!acceptedAt || readAt === acceptedAt) return null;
  const words = t(by === 'teacher' ? 'page.bench.correctedBy.teacher' : 'page.bench.correctedBy.team', { time: clock(acceptedAt) });
  return reason ? `${words} ${t('page.quoted', { words: reason })}` : words;
}

/** Why a teacher keeps this reading out of every result, or null. */
export const setAsideReason = reading => reading.setAside?.at(-1)?.reason ?? null;

/** "0 A → 45 µA" for each covering and opening, of what the server knows or of what this phone still holds. */
function openings({ toggles, points }, units) {
  const numbers = (toggles ?? points).map(({ typed, voltage, current, voltageV, currentA }) =>
    amountWords(voltageV ?? currentA, voltageV == null ? 'A' : 'V', typed ?? voltage ?? current, units));
  return numbers.slice(numbers.length / 2).map((_, pair) => t('page.bench.opening', { covered: numbers[2 * pair], open: numbers[2 * pair + 1] }));
}

/** As understood by the server, or as typed while it has not answered; a unit inside the text is enough. */
function amountWords(value, unit, typed, units) {
  if (value != null) return prefixed(value, unit);
  if (!typed || /[^\d\s.,'+\u2212-]/.test(typed.text)) return typed?.text ?? null;
  return `${typed.text} ${unitOf(typed.unit, units)?.symbols[0] ?? ''}`;
}
