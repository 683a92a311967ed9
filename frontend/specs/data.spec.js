import { tableAddress } from '/data/address.js';
import { grouped, rowsOf } from '/data/groups.js';
import { curl } from '/data/logger-line.js';
import { same, spec } from './spec.js';

const tables = ['day', 'cells', 'dreams', 'results', 'readings'].map((name, i) => ({ path: `${name}.csv`, rows: i }));

spec('shows results first and the day last', () => {
  same(grouped(tables).map(([group]) => group), ['results', 'built', 'measured', 'day']);
});

spec('shows a table that no group knows with the day', () => {
  same(grouped(tables).at(-1)[1].map(({ path }) => path), ['day.csv', 'dreams.csv']);
});

spec('counts the rows of a table, and none of one that is not there', () => {
  same([rowsOf(tables, 'readings'), rowsOf(tables, 'toggles')], [4, 0]);
});

spec('asks for a spreadsheet of the decimal mark that the language writes', () => {
  same(tableAddress('7', 'cells', 'spreadsheet', ','), '/api/labdays/7/tables/cells.csv?spreadsheet=true&decimalComma=true');
  same(tableAddress('7', 'cells', 'spreadsheet', '.'), '/api/labdays/7/tables/cells.csv?spreadsheet=true&decimalComma=false');
  same(tableAddress('7', 'cells', 'program', ','), '/api/labdays/7/tables/cells.csv');
});

spec('writes a line for a shell in which no name can end a word', () => {
  const line = curl('http://host:8080', 'TOKEN', { cell: 'D1', station: "Bob's lamp" });
  same(line.includes('-H "Authorization: Bearer TOKEN"'), true);
  same(line.includes(`"station":"Bob'\\''s lamp"`), true);
  same(curl('http://host', 'T', null).includes('"light":"1520 lx"'), true);
});
