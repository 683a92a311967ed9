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
    : reading.kind === 'toggles' ? [t('page.bench.openings', { times: openings(reading) })]
    : [amountWords(reading.voltageV, 'V', reading.voltage, units), amountWords(reading.currentA, 'A', reading.current, units)];
  const sentence = parts.filter(Boolean).join(', ');
  return reading.acceptedAt ? t('page.bench.readingAt', { reading: sentence, time: clock(reading.acceptedAt) }) : sentence;
}

/** Why a teacher keeps this reading out of every result, or null. */
export const setAsideReason = reading => reading.setAside?.at(-1)?.reason ?? null;

/** Of what the server knows, or of what this phone still holds: covered and open in turn. */
const openings = ({ toggles, points }) => (toggles ?? points).length / 2;

/** As understood by the server, or as typed while it has not answered; a unit inside the text is enough. */
function amountWords(value, unit, typed, units) {
  if (value != null) return prefixed(value, unit);
  if (!typed || /[^\d\s.,'+\u2212-]/.test(typed.text)) return typed?.text ?? null;
  return `${typed.text} ${unitOf(typed.unit, units)?.symbols[0] ?? ''}`;
}
