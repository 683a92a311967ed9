/** An invented cell to begin with: four square centimetres of berry-dyed film at a window. */
import { spelled } from '../core/format.js';

const typed = (text, unit) => ({ text: spelled(text), unit });

export const EXAMPLE = {
  label: '',
  voltage: typed('412', 'mV'),
  current: typed('640', 'uA'),
  dark: typed('', 'uA'),
  area: typed('4.0', 'cm2'),
  reference: typed('100', 'Wm2'),
  lamp: 'window',
  instrument: 'luxMeter',
  light: typed('12000', 'lx'),
  readAt: typed('', 'cm'),
  distance: typed('', 'cm'),
  angle: typed('', 'deg'),
  dye: 'anthocyanin',
  from: 'spot',
  lightPercent: '',
  areaPercent: '',
  pair: 'load-voltage',
  voltageUnit: 'mV',
  currentUnit: 'uA',
  rows: [['10', '6.3'], ['100', '61'], ['220', '128'], ['330', '181'], ['470', '231'], ['680', '276'],
    ['1000', '311'], ['2200', '360'], ['4700', '386'], ['10000', '399'], ['100000', '410']].map(row => row.map(text => spelled(text))),
  photocurrent: typed('650', 'uA'),
  saturation: typed('25', 'nA'),
  ideality: typed('1.6', 'one'),
  series: typed('60', 'ohm'),
  shunt: typed('5', 'kohm'),
  temperature: typed('25', 'degC'),
};
