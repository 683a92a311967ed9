import { curvesOf, levelsOf, tableOf } from '/findings/downloads.js';
import { lookAt } from '/findings/file.js';
import { changed, travelling } from '/findings/filters.js';
import { compared } from '/findings/overview.js';
import { dotsOf, pictureOf } from '/findings/plot.js';
import { wordsFor } from '/findings/words.js';
import { same, spec } from './spec.js';

const cell = (label, standing, level, watts) => ({
  label, team: 'Larch, "the" =1', mark: 0, standing, failedStage: standing === 'failed' ? 'dye' : null,
  day: '', figure: watts == null ? null : { value: watts, standardUncertainty: watts / 4, low: watts / 2, high: watts * 2 },
  levels: level == null ? [] : [{ parameter: 'bakeTemperature', level }],
});
const cells = [cell('L1', 'counts', '450', 0.05), cell('L2', 'failed', '350'), cell('L3', 'waiting', '350'), cell('L4', 'counts', null, 1)];
const one = {
  parameter: 'bakeTemperature', kind: 'number', strength: 'clear', p: 0.001,
  levels: [{ level: '350', made: 1, n: 0, failed: 1, median: null, interval: null }, { level: '450', made: 1, n: 1, failed: 0, median: 0.05, interval: { low: 0.04, high: 0.06 } }],
};
const day = { measure: 'power', outcome: null, units: [{ parameter: 'bakeTemperature', unit: 'degC' }], study: { parameters: [one] } };
const words = wordsFor(day, [{ key: 'degC', symbols: ['°C'] }]);

spec('shows cells at their level and leaves out those without', () => {
  same(dotsOf('bakeTemperature', cells).map(({ label, level }) => `${label} ${level}`), ['L1 450', 'L2 350', 'L3 350']);
});

spec('draws what works and what broke, with medians and their intervals', () => {
  const picture = pictureOf(one, cells, words);
  same(picture.dots.map(({ x, failed }) => [x, failed]), [[450, false], [350, true]]);
  same(picture.medians.map(({ x, y, low, high }) => [x, y, low, high].map(each => Number(each.toPrecision(6)))), [[450, 5, 4, 6]]);
});

spec('words levels with their unit, ranges as ranges', () => {
  same(words.level('bakeTemperature', '450'), '450 °C');
  same(words.level('bakeTemperature', '350…400'), '350 – 400 °C');
});

spec('gives a level to the parameter whose name begins alike', () => {
  const said = words.sentence({ key: 'finding.next.sharpen', values: {
    firstParameter: 'bakeTemperature', firstLevel: '450', firstOtherLevel: '350', cells: 3 } }, null);
  same([said.includes('450 °C'), said.includes('350 °C'), said.includes('{')], [true, true, false]);
});

spec('puts the strongest evidence first', () => {
  const parameters = ['cannotTell', 'nothingToCompare', 'confounded', 'clear', 'suggestive'].map(strength => ({ strength, parameter: strength, p: 0.5 }));
  same(compared({ study: { parameters } }).map(({ strength }) => strength), ['clear', 'suggestive', 'confounded', 'cannotTell']);
});

spec('words a table with its own names', () => {
  const table = { measure: 'outcome', outcome: 'η in %', units: [], study: { parameters: [{ parameter: 'dye', kind: 'sort' }] } };
  const own = wordsFor(table, []);
  same([own.parameter('dye'), own.level('dye', 'failed'), own.measure.title, own.value(1.234)], ['dye', 'failed', 'η in %', '1.2']);
  const said = own.sentence({ key: 'finding.clear.rise', values: { cells: 9 } }, 'dye');
  same([said.includes('“η in %”') || said.includes('„η in %“'), said.includes('{')], [true, false]);
});

spec('stands a cell that gives nothing at half the least', () => {
  const zero = pictureOf(one, [cell('L1', 'counts', '450', 0.05), cell('L5', 'counts', '350', 0)], words);
  same(zero.dots.map(({ y }) => Number(y.toPrecision(6))), [5, 2.5]);
});

spec('changes a filter value by value and as a whole', () => {
  const one = changed(changed(new Map(), 'team', 'a', true), 'team', 'b', true);
  same(travelling(one), ['team\ta', 'team\tb']);
  same(travelling(changed(one, 'team', 'a', false)), ['team\tb']);
  same(travelling(changed(changed(one, 'standing', 'counts', true), 'team')), ['standing\tcounts']);
  same(changed(changed(one, 'team', 'a', false), 'team', 'b', false).size, 0);
  same(changed(one).size, 0);
});

spec('saves curves and levels in the units their heads name', () => {
  const lines = curvesOf([{ label: 'L1', level: '450', points: [{ x: 250, y: 1500 }] }], 'bakeTemperature').split('\r\n');
  same(lines, ['cell,bakeTemperature,voltage_V,current_density_mA_cm2', 'L1,450,0.25,1.5', '']);
  same(levelsOf(one, words).split('\r\n')[1], '350,1,0,1,,,,,,');
});

spec('saves data that a spreadsheet reads as it is', () => {
  const lines = tableOf(one, cells, words).split('\r\n');
  same(lines[0], 'cell,team,day,bakeTemperature,standing,failed_stage,power_density_uW_cm2,low_95,high_95');
  same(lines[1].startsWith('L1,"Larch, ""the"" =1",,450,counts,,5'), true);
  same(lines[2], 'L2,"Larch, ""the"" =1",,350,failed,dye,,,');
  same(lines.length, 5);
});

spec('keeps what was chosen last when answers come late and out of order', async () => {
  const arrive = [];
  const late = () => new Promise(done => arrive.push(done));
  const page = { file: null };
  const first = lookAt(page, { name: 'a.csv', roles: { outcome: 'power' } }, late);
  same([page.file.reading, page.file.roles], [true, { outcome: 'power' }]);
  const second = lookAt(page, { name: 'a.csv', roles: { outcome: 'power', team: 'team' } }, late);
  arrive[1]('second look');
  await second;
  arrive[0]('first look');
  await first;
  same(page.file, { name: 'a.csv', roles: { outcome: 'power', team: 'team' }, look: 'second look' });
});

spec('goes back to the file before when the next one is refused', async () => {
  const page = { file: null };
  await lookAt(page, { name: 'a.csv', roles: {} }, async () => 'a look');
  const refused = await lookAt(page, { name: 'b.csv', roles: {} }, async () => { throw new Error('too long'); }).catch(error => error.message);
  same([refused, page.file.name, page.file.look, page.file.reading], ['too long', 'a.csv', 'a look', false]);
});
