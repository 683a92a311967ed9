import { MOST_ROWS, readSweepFile, thinned, turned } from '/bench/sweep-file.js';
import { get } from '/core/http.js';
import { same, spec } from './spec.js';

const catalogue = await get('/api/catalogue');
const read = (...lines) => readSweepFile(lines.join('\n'), catalogue);
const faults = (...lines) => read(...lines).faults.map(({ row, what, value }) => [row, what, value]);

spec('knows the columns of a logger by their units, however they are called', () => {
  for (const head of ['voltage (mV);current (µA)', 'U [mV];I [uA]', 'Spannung in mV;Strom in µA', 'voltage_mv;current_ua', 'U/mV;I/µA']) {
    const { rows, units } = read(head, '412;0', '380;40,5');
    same(rows, [{ voltage: '412', current: '0' }, { voltage: '380', current: '40.5' }], head);
    same(units, { voltage: 'mV', current: 'uA' }, head);
  }
});
spec('takes commas and tabs, a mark in front, lines above the names and columns beside', () => {
  same(read('\uFEFF# logger 7', '', 'time (s),voltage (V),current (mA)', '0,0.4,1.2', '1,0.3,1.9').rows, [{ voltage: '0.4', current: '1.2' }, { voltage: '0.3', current: '1.9' }]);
  same(read('"current (mA)"\t"voltage (V)"', '1,2\t0,4').rows, [{ voltage: '0.4', current: '1.2' }]);
});
spec('writes a unit that the form does not offer behind the number', () => {
  const { rows, units } = read('V (V);I (A)', '0.4;1.2E-4');
  same(rows, [{ voltage: '0.4', current: '1.2E-4 A' }]);
  same(units, { voltage: 'V', current: 'uA' });
});
spec('sees that a file counts the current of a generator as negative, and turns it', () => {
  const { negative, rows } = read('voltage (mV);current (µA)', '0;-95', '200;-90', '400;-10', '412;0');
  same(negative, true);
  same(turned(rows).map(({ current }) => current), ['95', '90', '10', '0']);
  same(read('voltage (mV);current (µA)', '0;95', '200;90', '430;-1').negative, false);
});
spec('turns there and back', () => {
  const rows = [{ voltage: '1', current: '+3 µA' }, { voltage: '2', current: '0.00' }, { voltage: '3', current: '\u22124,5' }];
  same(turned(rows).map(({ current }) => current), ['-3 µA', '0.00', '4,5']);
});
spec('names everything that is to be mended', () => {
  same(faults('voltage (mV);current (µA)', '412;x', ';40', '9000;5', '300;7 kg', '200;90'),
    [[2, 'noNumber', 'x'], [3, 'missing', ''], [4, 'impossible', '9000'], [5, 'unit', '7 kg']]);
});
spec('names a missing or mistyped unit, a second column and a file of something else', () => {
  same(faults('voltage;current', '1;2'), [[1, 'headUnit', 'voltage']]);
  same(faults('voltage (kV);current (mA)', '1;2'), [[1, 'headUnit', 'voltage (kV)']]);
  same(faults('U1 (mV);U2 (mV);I (µA)', '1;2;3'), [[1, 'twice', 'U2 (mV)']]);
  same(faults('\u0089PNG', 'IHDR'), [[1, 'noHead', '\u0089PNG']]);
  same(faults('voltage (mV);current (µA)', ''), [[2, 'noRows', '']]);
});
spec('takes as many rows as a sweep holds, the first and the last among them', () => {
  const rows = Array.from({ length: 240 }, (_, i) => i);
  const few = thinned(rows);
  same([few.length, few[0], few.at(-1), new Set(few).size], [MOST_ROWS, 0, 239, MOST_ROWS]);
  same(thinned([1, 2]), [1, 2]);
});
