/** What the server is asked: typed numbers as plain ones in the units of the contract. Null while a number is missing. */
import { readNumber } from '../core/quantity.js';
import { judge, settle } from '../core/plausibility.js';
import { fieldOf, SMALL_LAMPS } from './fields.js';

/** Voltages at which a diode's curve is drawn: closer together near zero, where small cells live. */
const GRID_V = Array.from({ length: 161 }, (_, i) => 1.6 * (i / 160) ** 2);

const FEWEST_ROWS = 5;

export const lightQuestion = (tried, catalogue) => complete({ ...lightPart(tried, catalogue), ...placePart(tried, catalogue) });

export function curveQuestion(tried, catalogue) {
  const points = tried.rows.map(row => pointOf(row, tried, catalogue)).filter(point => point !== null);
  if (points.length < FEWEST_ROWS || points.includes(undefined)) return null;
  const temperature = amount('temperature', tried, catalogue);
  return complete({ points, temperatureC: inCelsius(temperature, catalogue) });
}

export const diodeQuestion = (tried, catalogue) => diodeBody({
  photocurrentA: needed('photocurrent', tried, catalogue),
  saturationCurrentA: needed('saturation', tried, catalogue),
  idealityFactor: needed('ideality', tried, catalogue),
  seriesResistanceOhm: needed('series', tried, catalogue),
  shuntResistanceOhm: needed('shunt', tried, catalogue),
  temperatureC: inCelsius(amount('temperature', tried, catalogue), catalogue),
});

/** A diode with the voltages of its curve. */
export const diodeBody = diode => complete({ ...diode, voltagesV: GRID_V });

/** @returns {number | null | undefined} in SI; null when nothing is typed, undefined when it cannot be read or cannot be */
export function amount(name, tried, catalogue) {
  return orNothing(readOf(name, tried, catalogue), ({ valueSi }) => valueSi);
}

/** The same with the step of its last digit: {valueSi, resolutionSi}. */
export const readOf = (name, tried, catalogue) =>
  amountAs(fieldOf(name, catalogue, tried.instrument), tried[name] ?? {}, catalogue.units);

export function needed(name, tried, catalogue) {
  return amount(name, tried, catalogue) ?? undefined;
}

function amountAs(field, { text = '', unit }, units) {
  if (text.trim() === '') return null;
  const read = settle(field, readNumber(text, unit || field.units[0], [field.quantity], units));
  if (read.kind !== 'understood') return undefined;
  return judge(field, read.amounts[0], units).verdict === 'impossible' ? undefined : read.amounts[0];
}

const orNothing = (amount, take) => (amount ? take(amount) : amount);

export function lightPart(tried, catalogue) {
  const reading = needed('light', tried, catalogue);
  const lux = tried.instrument === 'luxMeter';
  return {
    source: tried.lamp, dye: tried.dye, instrument: tried.instrument,
    illuminanceLx: lux ? reading : null, irradianceWm2: lux ? null : reading,
  };
}

export function placePart(tried, catalogue) {
  const near = SMALL_LAMPS.includes(tried.lamp);
  const distanceM = near ? amount('distance', tried, catalogue) : null;
  const readAtM = near ? amount('readAt', tried, catalogue) : null;
  const carried = distanceM !== null && readAtM !== null;
  return {
    distanceM: carried ? distanceM : null, readAtM: carried ? readAtM : null,
    angleDeg: inUnit(amount('angle', tried, catalogue), 'deg', catalogue),
  };
}

/** The rows of the sweep, two {valueSi, resolutionSi} each; null when empty, undefined when half filled or not to be read. */
export const rowsRead = (tried, catalogue) => tried.rows.map(row => rowRead(row, tried, catalogue));

function rowRead([first, second], tried, catalogue) {
  if (first.trim() === '' && second.trim() === '') return null;
  const [a, b] = columnsOf(tried);
  const amounts = [[a, first], [b, second]].map(([column, text]) =>
    amountAs(fieldOf(column.name, catalogue), { text, unit: column.unit }, catalogue.units));
  return amounts.every(Boolean) ? amounts : undefined;
}

const pointOf = (row, tried, catalogue) => orNothing(rowRead(row, tried, catalogue),
  amounts => Object.assign({}, ...columnsOf(tried).map((column, i) => partOf(column, amounts[i]))));

/** A value, and for what a meter showed the standard uncertainty of its last digit (JCGM 100:2008, F.2.2.1). */
const partOf = ({ key, uncertainty }, { valueSi, resolutionSi }) => ({
  [key]: valueSi, ...(uncertainty ? { [uncertainty]: resolutionSi / Math.sqrt(12) } : {}),
});

/** The two columns of the sweep: {name, unit, key, resolution, uncertainty}, the keys as in the contract. */
export function columnsOf({ pair, voltageUnit, currentUnit }) {
  const columns = {
    load: { name: 'load', unit: 'ohm', key: 'loadOhm' },
    voltage: { name: 'voltage', unit: voltageUnit, key: 'voltageV', resolution: 'voltageResolutionV', uncertainty: 'voltageUncertaintyV' },
    current: { name: 'current', unit: currentUnit, key: 'currentA', resolution: 'currentResolutionA', uncertainty: 'currentUncertaintyA' },
  };
  return pair.split('-').map(name => columns[name]);
}

/** What stands wrong in a row, for its mark: 'empty', 'wrong' or 'fine'. */
export function rowTone(row, tried, catalogue) {
  const point = pointOf(row, tried, catalogue);
  if (point === null) return 'empty';
  return point === undefined ? 'wrong' : 'fine';
}

export const inCelsius = (si, catalogue) => inUnit(si, 'degC', catalogue);

function inUnit(si, key, { units }) {
  if (si === null || si === undefined) return si;
  const unit = units.find(each => each.key === key);
  return (si - unit.offsetSi) / unit.toSi;
}

const complete = body => (Object.values(body).includes(undefined) ? null : body);
