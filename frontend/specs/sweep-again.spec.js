import { Sweep } from '/bench/sweep.js';
import { draftOfReading } from '/bench/sweep-again.js';
import { pointOf, toneOf } from '/bench/sweep-rows.js';
import { get } from '/core/http.js';
import { close, same, spec } from './spec.js';

const catalogue = await get('/api/catalogue');
const typed = (text, unit) => ({ text, unit });
const opened = rows => draftOfReading({ rows }, catalogue.units);

spec('opens a sweep with its rows as they were typed', () =>
  same(opened([{ load: typed('1 Mohm', 'Mohm'), voltage: typed('0.352', 'V'), current: null }]),
    { way: 'loadVoltage', voltageUnit: 'V', currentUnit: 'uA', rows: [{ load: '1 Mohm', voltage: '0.352', current: '' }] }));

spec('writes a unit behind a number that had another one beside it', () =>
  same(opened([{ load: typed('10', 'kohm'), voltage: null, current: typed('0,04', 'mA') }, { load: typed('330', 'ohm'), voltage: null, current: typed('45', 'uA') }]).rows.map(({ load, current }) => [load, current]),
    [['10 kΩ', '0,04'], ['330', '45 µA']]));

spec('opens rows of different columns in three, any two of which tell the third', () => {
  const draft = opened([{ load: null, voltage: typed('400', 'mV'), current: typed('0', 'uA') }, { load: typed('1000', 'ohm'), voltage: typed('100', 'mV'), current: null }]);
  const sweep = new Sweep(draft, catalogue);
  same(draft.way, 'anyTwo');
  same(sweep.filled.map(row => sweep.tone(row)), ['fine', 'fine']);
  close(pointOf(sweep.read(draft.rows[1])).currentA, 1e-4);
  same(sweep.sent[0], { load: null, voltage: typed('400', 'mV'), current: typed('0', 'uA') });
});

spec('finds fault with a row of one number only', () => {
  const sweep = new Sweep({ way: 'anyTwo', rows: [{ load: '', voltage: '400', current: '' }] }, catalogue);
  same(toneOf(sweep.rows[0], 'anyTwo', sweep.read(sweep.rows[0])), 'impossible');
});

spec('asks for five rows, and for a tick where one is unusual', () => {
  const rows = ['100', '200', '300', '400', '1200'].map(voltage => ({ load: '1000', voltage, current: '' }));
  same(new Sweep({ way: 'loadVoltage', rows: rows.slice(1) }, catalogue).trouble === null, false);
  same(new Sweep({ way: 'loadVoltage', rows, confirmed: false }, catalogue).trouble === null, false);
  same(new Sweep({ way: 'loadVoltage', rows, confirmed: true }, catalogue).trouble, null);
});

spec('finds a refused row among rows that were not sent', () => {
  const rows = [{ load: '10', voltage: '', current: '' }, { load: '330', voltage: '12', current: '' }];
  same(new Sweep({ way: 'loadVoltage', rows }, catalogue).rowOfSent(0), 1);
});
