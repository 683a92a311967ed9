/** Small wordings of the bench. */
import { clock, prefixed } from '../core/format.js';
import { t } from '../core/texts.js';

const ORDINAL = new Intl.PluralRules('en', { type: 'ordinal' });

/** "3rd" */
export const place = number => t(`page.bench.place.${ORDINAL.select(number)}`, { place: number });

/** A reading in one line: "412 mV, 45 µA at 14:52". */
export function readingWords(reading) {
  const parts = reading.kind === 'sweep' ? [t('page.bench.points', { points: reading.points.length })]
    : [amountWords(reading.voltageV, 'V', reading.voltage), amountWords(reading.currentA, 'A', reading.current)];
  const sentence = parts.filter(Boolean).join(', ');
  return reading.acceptedAt ? t('page.bench.readingAt', { reading: sentence, time: clock(reading.acceptedAt) }) : sentence;
}

function amountWords(value, unit, typed) {
  if (value != null) return prefixed(value, unit);
  return typed ? `${typed.text} ${typed.unit ?? ''}` : null;
}
