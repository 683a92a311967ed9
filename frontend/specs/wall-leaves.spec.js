import { honours } from '/wall/honours.js';
import { leavesOf, waitingCells } from '/wall/leaves.js';
import { NOTHING_NOTED, noted } from '/wall/notes.js';
import { tieOf } from '/wall/ties.js';
import { same, spec } from './spec.js';

const team = (name, place, cells = [], side = {}) => ({ teamId: name, name, place, placeLow: place, placeHigh: place, cells, side });
const cell = (label, standing, key) => ({ cellId: label, label, standing, ranked: standing === 'counts', remark: key ? { key, values: {} } : null });
const kinds = leaves => leaves.map(leaf => leaf.kind);
const FIT = { rows: 8, lines: 5 };

spec('has a leaf of places even before there is a picture', () => same(kinds(leavesOf(null, FIT)), ['places']));

spec('turns to the boards beside once somebody is ranked', () =>
  same(kinds(leavesOf({ teams: [team('Otters', 1)] }, FIT)), ['places', 'beside']));

spec('turns to the cells that wait, a few at a time', () => {
  const cells = ['noArea', 'noDarkCheck', 'noLightReading'].map(key => cell(key, 'waiting', `standing.${key}`));
  same(kinds(leavesOf({ teams: [team('Otters', null, cells)] }, { rows: 8, lines: 2 })), ['places', 'waiting', 'waiting']);
});

spec('says nothing about cells that are being built or count, and what broke last, each reason once', () =>
  same(waitingCells([team('Otters', 1, [
    cell('A1', 'waiting', 'standing.building'), cell('A2', 'failed', 'standing.failed'), cell('A3', 'counts', null),
    cell('A4', 'waiting', 'standing.noArea'), cell('A5', 'waiting', 'standing.noArea'), cell('A6', 'waiting', 'standing.noDarkCheck'),
  ])]).map(each => each.labels.join()), ['A4,A5', 'A6', 'A2']));

spec('draws a bracket round teams that share a place, and none round one alone', () => {
  const teams = [team('a', 1), team('b', 2), team('c', 2), team('d', 2), team('e', null), team('f', null)];
  same(teams.map((_, at) => tieOf(teams, at)), [
    { words: '', size: 0 }, { words: 'tied first', size: 3 }, { words: 'tied', size: 0 }, { words: 'tied last', size: 0 },
    { words: '', size: 0 }, { words: '', size: 0 },
  ]);
});

spec('orders the boards beside by their own figure and leaves out teams without one', () => {
  const boards = honours([
    team('a', 1, [], { working: 2, declared: 3, geometricDeviation: 2.5 }),
    team('b', 2, [{ ...cell('B1', 'counts'), figure: { value: 0.1 } }],
      { working: 3, declared: 3, geometricDeviation: 1.2, bestVerifiedCell: 'B1' }),
    team('c', null, [], { working: 0, declared: 3, geometricDeviation: null }),
  ]);
  same(boards.map(({ key, rows }) => [key, rows.map(row => row.team.name)]),
    [['verified', ['b']], ['yield', ['b', 'a']], ['alike', ['b', 'a']], ['retention', []]]);
});

spec('says how many more there are where a board is full', () => {
  const teams = Array.from({ length: 7 }, (_, i) => team(`t${i}`, i + 1, [], { working: 1, declared: 1 }));
  same(honours(teams).find(({ key }) => key === 'yield').more, 3);
});

const one = { teams: [team('a', 1), team('b', 2)] };
const turned = { teams: [team('b', 1), team('a', 2)] };

spec('notes nothing at the first picture', () => same(noted(NOTHING_NOTED, one, 0).news, null));

spec('tells who takes the lead and where each team was', () => {
  const notes = noted(noted(NOTHING_NOTED, one, 0), turned, 1000);
  same([notes.news.key, notes.news.values.names, notes.moves.get('a').from, notes.moves.get('b').from], ['leads', 'b', '1', '2']);
});

spec('forgets moves after two minutes and news after less', () => {
  const notes = noted(noted(NOTHING_NOTED, one, 0), turned, 1000);
  same([noted(notes, turned, 60_000).news, noted(notes, turned, 60_000).moves.size, noted(notes, turned, 130_000).moves.size], [null, 2, 0]);
});

spec('tells of a cell that counts now', () => {
  const before = { teams: [team('a', 1, [cell('A1', 'waiting', 'standing.noArea')])] };
  const after = { teams: [team('a', 1, [cell('A1', 'counts', null)])] };
  same(noted(noted(NOTHING_NOTED, before, 0), after, 5).news, { key: 'counts', values: { label: 'A1', team: 'a' }, at: 5 });
});

spec('does not call a first ranking a move', () => {
  const before = { teams: [team('a', null)] };
  same(noted(noted(NOTHING_NOTED, before, 0), { teams: [team('a', 1)] }, 5).moves.size, 0);
});

spec('says that the rule changed, and calls nobody moved by it', () => {
  const before = { ...one, metric: 'powerDensity', rule: 'medianOfDeclared' };
  const after = rule => noted(noted(NOTHING_NOTED, before, 0), { ...turned, ...rule }, 1000);
  const [metric, count] = [{ metric: 'voltage', rule: 'voltage.medianOfDeclared' }, { metric: 'powerDensity', rule: 'meanOfDeclared' }].map(after);
  same([metric.news.key, metric.news.values.metric, metric.moves.size, count.news.key], ['rule', 'catalogue.metric.voltage', 0, 'ruleCount']);
});

spec('shows a cell that has a result and is not ranked among those that wait', () =>
  same(waitingCells([team('Otters', null, [{ ...cell('A1', 'counts', 'standing.noControl'), ranked: false }])]).map(each => each.labels.join()), ['A1']));

spec('has no board of cells read twice where a reading cannot be repeated', () =>
  same(honours([], 'retention').map(({ key }) => key), ['yield', 'alike', 'retention']));

spec('tells which cell kept most and for how long', () => {
  const kept = { cellId: 'B2', share: 0.92, hours: 24 };
  const [{ figure }] = honours([team('b', 1, [cell('B2', 'counts')], { kept })], 'powerDensity').at(-1).rows;
  same([figure.label, figure.share, figure.hours], ['B2', 0.92, 24]);
});
