/** A recorded sweep opened again, to mend its rows. Pure. */
import { METER_UNITS, WAYS } from './sweep-rows.js';

const COLUMNS = ['load', 'voltage', 'current'];

/** The draft {way, voltageUnit, currentUnit, rows} in which a reading's rows stand as they were typed. */
export function draftOfReading({ rows }, units) {
  const unit = column => METER_UNITS[column].find(key => key === rows.find(row => row[column])?.[column].unit) ?? METER_UNITS[column][0];
  const chosen = { load: 'ohm', voltage: unit('voltage'), current: unit('current') };
  return {
    way: wayOf(rows), voltageUnit: chosen.voltage, currentUnit: chosen.current,
    rows: rows.map(row => Object.fromEntries(COLUMNS.map(column => [column, textAgain(row[column], chosen[column], units)]))),
  };
}

/** The two columns in which all rows stand, or all three. */
const wayOf = rows => Object.keys(WAYS).find(way => rows.every(row => COLUMNS.every(column => Boolean(row[column]) === WAYS[way].includes(column)))) ?? 'anyTwo';

/** As typed; where its unit is neither in the text nor the chosen one, with its sign. */
export function textAgain(typed, chosen, units) {
  if (!typed) return '';
  const bare = /^[\d\s.,'+\u2212-]*$/.test(typed.text);
  return bare && typed.unit !== chosen ? `${typed.text} ${units.find(({ key }) => key === typed.unit)?.symbols[0] ?? ''}`.trim() : typed.text;
}
