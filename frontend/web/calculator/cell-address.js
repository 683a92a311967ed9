/** The calculator's address for the numbers behind a recorded result. */
import { toAddress } from './address.js';
import { EXAMPLE } from './example.js';

const UNITS = {
  V: [['mV', 1e-3], ['V', 1]],
  A: [['uA', 1e-6], ['mA', 1e-3], ['A', 1]],
  ohm: [['ohm', 1]],
};
const NOTHING = { text: '', unit: '' };

/** @param numbers as the server answers them beside a result @param label of the cell */
export function cellAddress(numbers, label) {
  const { light } = numbers;
  const tried = {
    ...EXAMPLE, label, from: numbers.points ? 'sweep' : 'spot',
    dark: typed(numbers.darkCurrentA, numbers.darkCurrentResolutionA, UNITS.A),
    area: { text: digits(numbers.areaCm2, 5), unit: 'cm2' },
    areaPercent: digits(100 * numbers.areaUncertaintyCm2 / numbers.areaCm2, 4),
    lamp: light.source, instrument: light.instrument, dye: light.dye,
    light: { text: digits(light.illuminanceLx ?? light.irradianceWm2, 6), unit: light.illuminanceLx ? 'lx' : 'Wm2' },
    lightPercent: digits(numbers.lightUncertaintyPercent, 4),
    reference: { text: digits(numbers.referenceIrradianceWm2, 6), unit: 'Wm2' },
    readAt: NOTHING, distance: NOTHING, angle: NOTHING, temperature: NOTHING,
    ...(numbers.points ? sweep(numbers.points) : spot(numbers)),
  };
  return `/calculator.html${toAddress('cell', tried)}`;
}

const spot = numbers => ({
  voltage: typed(numbers.voltageV, numbers.voltageResolutionV, UNITS.V),
  current: typed(numbers.currentA, numbers.currentResolutionA, UNITS.A),
});

/** Rows show the two columns that all of them have, loads first. */
function sweep(points) {
  const has = key => points.every(point => point[key] !== null);
  const pair = has('loadOhm') ? (has('voltageV') ? 'load-voltage' : 'load-current') : 'voltage-current';
  const [voltageUnit, volt] = UNITS.V[0];
  const [currentUnit, ampere] = UNITS.A[0];
  const column = {
    load: ({ loadOhm }) => digits(loadOhm, 6),
    voltage: point => stepped(point.voltageV, point.voltageResolutionV, volt),
    current: point => stepped(point.currentA, point.currentResolutionA, ampere),
  };
  return { pair, voltageUnit, currentUnit, rows: points.map(point => pair.split('-').map(name => column[name](point))) };
}

/** A number as it stood on a display: in the unit whose digits end where the display's did. */
function typed(si, stepSi, units) {
  if (si === null || si === undefined) return { text: '', unit: units[0][0] };
  const [unit, scale] = units.find(([, size]) => !(stepSi > size * 1.001)) ?? units.at(-1);
  return { text: stepped(si, stepSi, scale), unit };
}

function stepped(si, stepSi, scale) {
  if (!(stepSi > 0)) return digits(si / scale, 6);
  return (si / scale).toFixed(Math.min(12, Math.max(0, Math.round(-Math.log10(stepSi / scale)))));
}

const digits = (value, count) => String(Number(value.toPrecision(count)));
