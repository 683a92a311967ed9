/** A logger's file as rows of a load sweep: columns known by their units, everything to mend named by row and column. Pure. */
import { readNumber } from '../core/quantity.js';
import { verdictOn } from '../entry/echo.js';
import { METER_UNITS } from './sweep-rows.js';

export const MOST_ROWS = 60;
const MOST_BEFORE = 50;
const MOST_LINES = 100_000;
const UNITS = { uv: ['voltage', 'uV'], mv: ['voltage', 'mV'], v: ['voltage', 'V'], na: ['current', 'nA'], ua: ['current', 'uA'], ma: ['current', 'mA'], a: ['current', 'A'] };
const LAST_UNIT = /(?:^|[\s([/_,-])([uµμmnMk]?[VA])\s*[)\]]?$|(?:^|[\s([/_,-])(mv|uv|na|ua|ma)\s*[)\]]?$/;
const NAMED = { voltage: /volt|spannung|^u\b|^v\b/i, current: /current|strom|amp|^i\b/i };

/**
 * Reads the text of a file.
 * @returns {rows: [{voltage, current}] as typed, units: {voltage, current}, negative, faults: [{row, column, value, what, ...}]}; rows
 * are empty when anything is to be mended, and `negative` tells whether the file seems to count the current of a generator as negative
 */
export function readSweepFile(text, { units, fields }) {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  if (lines.length > MOST_LINES) return nothingBut({ row: null, column: null, value: String(lines.length), what: 'tooLong', limit: MOST_LINES });
  const head = lines.slice(0, MOST_BEFORE).findIndex(line => line.trim() !== '' && isHead(cellsOf(line, partedBy(line))));
  if (head < 0) return nothingBut(headFault(lines));
  const between = partedBy(lines[head]);
  const names = cellsOf(lines[head], between);
  const columns = { voltage: unitsIn(names, 'voltage'), current: unitsIn(names, 'current') };
  const twice = Object.values(columns).find(found => found.length > 1);
  if (twice) return nothingBut({ row: head + 1, column: names[twice[1].at], value: names[twice[1].at], what: 'twice' });
  const places = Object.fromEntries(Object.entries(columns).map(([column, [place]]) => [column, place]));
  return body(lines, head, { between, names, places, units, fields });
}

function body(lines, head, { between, names, places, units, fields }) {
  const faults = [];
  const read = [];
  for (let i = head + 1; i < lines.length; i += 1) {
    const cells = cellsOf(lines[i], between);
    if (cells.every(cell => cell === '')) continue;
    read.push(Object.fromEntries(Object.entries(places).map(([column, { at, unit }]) => {
      const given = cells[at] ?? '';
      const value = between === ',' ? given : given.replace(',', '.');
      const verdict = verdictOn(readNumber(value, unit, [column], units), fields.find(({ key }) => key === column), units);
      if (!['fine', 'unusual'].includes(verdict.tone)) faults.push({ row: i + 1, column: names[at], value: given, what: whatOf(verdict, given) });
      return [column, { text: value, valueSi: verdict.amount?.valueSi }];
    })));
  }
  if (faults.length > 0) return { rows: [], units: {}, negative: false, faults };
  if (read.length === 0) return nothingBut({ row: head + 2, column: null, value: '', what: 'noRows' });
  return {
    rows: read.map(row => ({ voltage: shown(row.voltage.text, places.voltage.unit, 'voltage'), current: shown(row.current.text, places.current.unit, 'current') })),
    units: { voltage: offered(places.voltage.unit, 'voltage'), current: offered(places.current.unit, 'current') },
    negative: read.filter(isDrawn).length > read.filter(isDelivered).length, faults,
  };
}

/** At most as many rows as a sweep holds, evenly along the file, its first and its last among them. */
export function thinned(rows, most = MOST_ROWS) {
  return rows.length <= most ? rows : Array.from({ length: most }, (_, i) => rows[Math.round((i * (rows.length - 1)) / (most - 1))]);
}

/** The same rows with every current counted the other way round. */
export const turned = rows => rows.map(row => ({ ...row, current: opposite(row.current) }));

function opposite(text) {
  if (/^[-\u2212]/.test(text)) return text.slice(1).trim();
  return /^\+?[\s0.,]*0[\s0.,]*(?:[^\d.,].*)?$/.test(text) ? text : `-${text.replace(/^\+/, '')}`;
}

const isDrawn = ({ voltage, current }) => voltage.valueSi * current.valueSi < 0;
const isDelivered = ({ voltage, current }) => voltage.valueSi * current.valueSi > 0;

/** A unit that the form does not offer stands behind the number. */
const shown = (text, unit, column) => (METER_UNITS[column].includes(unit) || /[A-Za-zµμ]$/.test(text) ? text : `${text} ${unit.replace('u', 'µ')}`);
const offered = (unit, column) => (METER_UNITS[column].includes(unit) ? unit : METER_UNITS[column][0]);

function whatOf({ tone, slip }, given) {
  if (given === '') return 'missing';
  if (tone === 'ask') return 'ambiguous';
  if (!slip) return 'impossible';
  return slip.slip === 'NOT_A_NUMBER' ? 'noNumber' : 'unit';
}

const partedBy = line => ['\t', ';', ','].map(sign => [line.split(sign).length, sign]).sort(([a], [b]) => b - a)[0][1];
const cellsOf = (line, between) => line.split(between).map(cell => cell.trim().replace(/^"(.*)"$/, '$1').trim());

function unitOf(name) {
  const found = LAST_UNIT.exec(name);
  return found ? UNITS[(found[1] ?? found[2]).replace(/[µμ]/, 'u').toLowerCase()] ?? null : null;
}

const unitsIn = (names, column) => names.flatMap((name, at) => {
  const [what, unit] = unitOf(name) ?? [];
  return what === column ? [{ at, unit }] : [];
});

const isHead = names => ['voltage', 'current'].every(column => unitsIn(names, column).length > 0);

/** The line that was meant to name the columns, with the name whose unit is missing or unknown. */
function headFault(lines) {
  const at = lines.findIndex(line => cellsOf(line, partedBy(line)).some(name => NAMED.voltage.test(name) || NAMED.current.test(name)));
  if (at < 0 || at >= MOST_BEFORE) return { row: 1, column: null, value: (lines[0] ?? '').slice(0, 40), what: 'noHead' };
  const names = cellsOf(lines[at], partedBy(lines[at]));
  const wrong = names.find(name => !unitOf(name) && (NAMED.voltage.test(name) || NAMED.current.test(name)));
  return { row: at + 1, column: wrong ?? null, value: wrong ?? lines[at].slice(0, 40), what: wrong ? 'headUnit' : 'noHead' };
}

const nothingBut = fault => ({ rows: [], units: {}, negative: false, faults: [fault] });
