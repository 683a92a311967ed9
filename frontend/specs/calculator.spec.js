import { fromAddress, toAddress } from '/calculator/address.js';
import { cellAddress } from '/calculator/cell-address.js';
import { cellQuestion } from '/calculator/cell-question.js';
import { changedKeys, moveSentence } from '/calculator/changes.js';
import { EXAMPLE } from '/calculator/example.js';
import { lineOf } from '/calculator/plot.js';
import { curveQuestion, diodeQuestion, lightQuestion, rowTone } from '/calculator/questions.js';
import { close, same, spec } from './spec.js';

const catalogue = await (await fetch('/api/catalogue')).json();
const tried = change => ({ ...EXAMPLE, ...change });
const typed = (text, unit) => ({ text, unit });

spec('keeps every typed number through the address, comma, unit and empty rows included', () => {
  const numbers = tried({ label: 'W&1', light: typed('3,5 klx', 'lx'), angle: typed('', 'deg'), rows: [['10', '6,3'], ['', '']] });
  same(fromAddress(toAddress('curve', numbers), EXAMPLE), { view: 'curve', tried: numbers, given: true });
});

spec('takes from the example what the address leaves out', () =>
  same(fromAddress('#light?lamp=halogen', EXAMPLE).tried, tried({ lamp: 'halogen' })));

spec('opens the first question under an address it does not know', () =>
  same(fromAddress('#nonsense', EXAMPLE).view, 'cell'));

spec('asks about lux as lux, with a decimal comma and the unit in the text', () => {
  const { illuminanceLx, irradianceWm2 } = lightQuestion(tried({ light: typed('3,5 klx', 'lx') }), catalogue);
  same([illuminanceLx, irradianceWm2], [3500, null]);
});

spec('asks about W/m² where the instrument shows W/m²', () =>
  same(lightQuestion(tried({ instrument: 'solarMeter', light: typed('85', 'Wm2') }), catalogue).irradianceWm2, 85));

spec('carries a reading to another distance only where both are known and the lamp is small', () => {
  const places = { readAt: typed('50', 'cm'), distance: typed('1', 'm') };
  const distances = numbers => [lightQuestion(tried(numbers), catalogue)].map(({ readAtM, distanceM }) => [readAtM, distanceM])[0];
  same(distances({ ...places, lamp: 'halogen' }), [0.5, 1]);
  same(distances({ ...places, lamp: 'sun' }), [null, null]);
  same(distances({ lamp: 'halogen', distance: typed('1', 'm') }), [null, null]);
});

spec('asks nothing while a number is missing, cannot be read or cannot be', () => {
  for (const text of ['', 'abc', '900000']) same(lightQuestion(tried({ light: typed(text, 'lx') }), catalogue), null, text);
});

spec('asks about a diode in SI', () => {
  const asked = diodeQuestion(tried({ saturation: typed('2,5e-1', 'nA'), shunt: typed('5', 'kohm'), temperature: typed('298.15', 'K') }), catalogue);
  close(asked.saturationCurrentA, 2.5e-10);
  close(asked.shuntResistanceOhm, 5000);
  close(asked.temperatureC, 25);
});

spec('sends the rows of a sweep as they were read and leaves Ohm’s law to the server', () => {
  const [first] = curveQuestion(EXAMPLE, catalogue).points;
  close(first.voltageV, 0.0063);
  same([first.loadOhm, 'currentA' in first], [10, false]);
  // JCGM 100:2008, F.2.2.1: a last digit of 0.1 mV has the standard uncertainty 0.1 mV / sqrt(12), 0.0289 mV.
  same(first.voltageUncertaintyV.toPrecision(3), '0.0000289');
});

spec('asks nothing about a sweep with fewer than five rows or one half filled', () => {
  const rows = EXAMPLE.rows.slice(0, 4);
  same([curveQuestion(tried({ rows }), catalogue), curveQuestion(tried({ rows: [...EXAMPLE.rows, ['5', '']] }), catalogue)], [null, null]);
});

spec('tells an empty row from a wrong one', () =>
  same([['', ''], ['10', ''], ['10', '6,3']].map(row => rowTone(row, EXAMPLE, catalogue)), ['empty', 'wrong', 'fine']));

spec('sees what changed, not how it was spelt round', () =>
  same(changedKeys(EXAMPLE, tried({ light: typed(' 12000 ', 'lx'), lamp: 'sun' }), ['lamp', 'light', 'dye']), ['lamp']));

spec('says which way a figure moved', () => {
  same(moveSentence('P', '41', '63', 'µW').includes('up from 41 to 63'), true);
  same(moveSentence('P', '1,041', '63', 'µW').includes('down from 1,041 to 63'), true);
  same(moveSentence('P', '41', '41', 'µW').includes('stays'), true);
});

spec('draws a curve from short circuit through its best point to open circuit and no further', () => {
  const answer = { currentsA: [3, 2, -5], openCircuitVoltageV: 0.3, voltageAtMaximumPowerV: 0.15, currentAtMaximumPowerA: 2.2 };
  same(lineOf([0, 0.2, 0.4], answer).map(({ voltageV }) => voltageV), [0, 0.15, 0.2, 0.3]);
});

spec('asks about a cell as the displays showed it, last digits included', () => {
  const asked = cellQuestion(tried({ current: typed('0,640', 'mA'), dark: typed('1.5', 'uA') }), catalogue);
  close(asked.currentA, 640e-6);
  close(asked.currentResolutionA, 1e-6);
  close(asked.darkCurrentResolutionA, 1e-7);
  close(asked.areaCm2, 4);
  same([asked.light.illuminanceLx, asked.lightResolution, asked.referenceIrradianceWm2], [12000, 1, 100]);
  same(['areaUncertaintyCm2', 'points'].filter(key => key in asked), []);
});

spec('asks about a cell by its sweep instead of its two numbers', () => {
  const asked = cellQuestion(tried({ from: 'sweep' }), catalogue);
  same([asked.points.length, asked.points[0].loadOhm, 'voltageV' in asked], [11, 10, false]);
  close(asked.points[0].voltageResolutionV, 1e-4);
});

spec('asks nothing about a cell while its area, its light or a row of its sweep cannot be read', () => {
  const missing = [{ area: typed('', 'cm2') }, { light: typed('x', 'lx') }, { from: 'sweep', rows: [...EXAMPLE.rows, ['5', '']] }];
  for (const change of missing) same(cellQuestion(tried(change), catalogue), null, JSON.stringify(change));
});

const recorded = {
  voltageV: 0.4, voltageResolutionV: 0.001, currentA: 9e-4, currentResolutionA: 1e-4, points: null, darkCurrentA: 0,
  darkCurrentResolutionA: 1e-6, areaCm2: 2.25, areaUncertaintyCm2: 0.106, lightUncertaintyPercent: 3.25,
  light: { source: 'window', instrument: 'luxMeter', illuminanceLx: 9000, irradianceWm2: null, dye: 'betalain' },
  referenceIrradianceWm2: 100, referenceAreaCm2: 1,
};

spec('opens a recorded result with its own digits, so that the calculator asks about the same numbers', () => {
  const { tried: numbers, view } = fromAddress(cellAddress(recorded, 'L1').split('.html')[1], EXAMPLE);
  same([view, numbers.label, numbers.current, numbers.voltage], ['cell', 'L1', typed('0.9', 'mA'), typed('400', 'mV')]);
  const asked = cellQuestion(numbers, catalogue);
  same(asked.areaUncertaintyCm2.toFixed(4), '0.1060');
  close(asked.currentResolutionA, recorded.currentResolutionA);
  same([asked.lightUncertaintyPercent, asked.light.illuminanceLx, asked.light.dye, asked.temperatureC], [3.25, 9000, 'betalain', null]);
});

spec('opens a recorded sweep by the two columns that every row has', () => {
  const points = [[10, 0.0063], [1000, 0.311]].map(([loadOhm, voltageV]) =>
    ({ loadOhm, voltageV, voltageResolutionV: 1e-4, currentA: null, currentResolutionA: null }));
  const { tried: numbers } = fromAddress(cellAddress({ ...recorded, points, voltageV: null, currentA: null }, 'L2').split('.html')[1], EXAMPLE);
  same([numbers.from, numbers.pair, numbers.rows], ['sweep', 'load-voltage', [['10', '6.3'], ['1000', '311.0']]]);
});
