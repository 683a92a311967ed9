import { isFilled, pointOf, readRow, sweepPoint, toneOf } from '/bench/sweep-rows.js';
import { get } from '/core/http.js';
import { close, same, spec } from './spec.js';

const catalogue = await get('/api/catalogue');
const unitOf = column => ({ load: 'ohm', voltage: 'mV', current: 'uA' })[column];
const parts = { units: catalogue.units, unitOf, fieldOf: key => catalogue.fields.find(field => field.key === key) };
const read = (row, way) => readRow(row, way, parts);

spec('reads a resistor and a voltage by Ohm’s law', () => {
  const point = pointOf(read({ load: '3.3 kΩ', voltage: '330' }, 'loadVoltage'));
  [[point.ohm, 3300], [point.voltageV, 0.33], [point.currentA, 1e-4]].forEach(([actual, expected]) => close(actual, expected));
});
spec('reads a resistor and a current, and two meters', () => {
  close(pointOf(read({ load: '1000', current: '100' }, 'loadCurrent')).voltageV, 0.1);
  close(pointOf(read({ voltage: '200', current: '100' }, 'voltageCurrent')).ohm, 2000);
});
spec('takes a resistor alone for a plan', () => {
  same(isFilled({ load: '330', voltage: ' ' }, 'loadVoltage'), false);
  same(toneOf({ load: '330' }, 'loadVoltage', read({ load: '330' }, 'loadVoltage')), 'empty');
});
spec('finds fault with half a row and with words', () => {
  const half = { load: '', voltage: '300' };
  same(toneOf(half, 'loadVoltage', read(half, 'loadVoltage')), 'impossible');
  const words = { load: '330', voltage: 'much' };
  same(toneOf(words, 'loadVoltage', read(words, 'loadVoltage')), 'impossible');
});
spec('finds fault with a voltage across no load, not with a current through none', () => {
  const short = { load: '0', voltage: '1', current: '90' };
  same(toneOf(short, 'loadVoltage', read(short, 'loadVoltage')), 'impossible');
  same(toneOf(short, 'loadCurrent', read(short, 'loadCurrent')) === 'impossible', false);
});
spec('sends the two columns of its way as typed', () =>
  same(sweepPoint({ load: '330', voltage: '12', current: '7' }, 'loadCurrent', unitOf),
    { load: { text: '330', unit: 'ohm' }, voltage: null, current: { text: '7', unit: 'uA' } }));
