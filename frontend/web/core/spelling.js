/** Makes the many spellings of the same signs one, and reads digits with marks between them. */

const EITHER = /^[1-9]\d{0,2}[.,]\d{3}$/;
const PLAIN = /^(\d+[.,]?\d*|[.,]\d+)$/;
const GROUPED = new RegExp('^[1-9]\\d{0,2}(?:([ \'])\\d{3}(?:\\1\\d{3})*(?:[.,]\\d*)?'
  + '|(?:,\\d{3})+\\.\\d*|(?:\\.\\d{3})+,\\d*|(?:,\\d{3}){2,}|(?:\\.\\d{3}){2,})$');

/** Text with plain digits, spaces and minus signs; a raised digit behind a digit becomes ^. */
export function plainText(text) {
  return text.replace(/(\d)[\u00b2\u00b3\u00b9\u2070-\u209f]/g, '$1^')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/[\u200b\u200e\u200f\u2060\ufeff]/g, '')
    .replace(/[\u2018\u2019]/g, '\'')
    .normalize('NFKC').replace(/[\u2010-\u2015\u2212]/g, '-').replace(/\s+/g, ' ').trim();
}

/** A unit without spaces and dots, u for micro, in small letters but for a leading m or M: milli is not mega. */
export function unitSpelling(symbol) {
  const tight = plainText(symbol).replace(/[ \u00b7\u22c5]/g, '').replace(/\u03bc/g, 'u');
  return tight.startsWith('M') ? `M${tight.slice(1).toLowerCase()}` : tight.toLowerCase();
}

/** The ways to read digits: none when they are no number, two when one mark may be either sign ("1,234"). */
export function decimalReadings(digits) {
  if (EITHER.test(digits)) return [`0${withPoint(digits)}`, digits.replace(/\D/g, '')];
  if (GROUPED.test(digits)) return [withPoint(digits.replaceAll(firstMark(digits), ''))];
  return PLAIN.test(digits) ? [withPoint(digits)] : [];
}

const withPoint = digits => digits.replace(',', '.');
const firstMark = digits => /^\d+(.)/.exec(digits)[1];
