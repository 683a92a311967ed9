import { render } from '/kit/element.js';
import { wallBoard } from '/wall/board.js';
import { whyNot } from '/wall/why.js';
import { wallHead } from '/wall/head.js';
import { same, spec } from './spec.js';

const figure = { value: 1.3472, unit: 'times', standardUncertainty: 0.12, low: 1.1184, high: 1.6021 };
const state = {
  title: 'Day', metric: 'ratioToControl', rule: 'ratioToControl.medianOfDeclared', referenceIrradianceWm2: 50, entryOpen: true,
  teams: [{ teamId: 'a', name: 'Otters', mark: 0, place: 1, placeLow: 1, placeHigh: 1, figure, cells: [
    { cellId: 'A1', label: 'A1', standing: 'counts', ranked: true, figure },
    { cellId: 'A2', label: 'A2', standing: 'counts', ranked: false, figure: null, remark: { key: 'standing.controlNotRead', values: {} } },
  ] }],
};

function drawn(template) {
  const page = document.createElement('div');
  render(template, page);
  return selector => page.querySelector(selector).textContent.trim().replace(/\s+/g, ' ');
}

spec('names the unit of what the day ranks by over the column of results', () =>
  same(drawn(wallBoard(state, state.teams, { join: null, moves: new Map() }))('thead .number'), '× control'));

spec('shows results in that unit', () =>
  same(drawn(wallBoard(state, state.teams, { join: null, moves: new Map() }))('tbody .number'), '1.35 1.12 to 1.60'));

spec('says in a few words which cell is not ranked and why', () =>
  same(drawn(wallBoard(state, state.teams, { join: null, moves: new Map() }))('.why'), 'A2 no control reading'));

spec('says less of each reason where the words would not fit, and never cuts one off', () => {
  const cell = (label, standing, key, values = {}) => ({ label, standing, ranked: false, remark: { key: `standing.${key}`, values } });
  const broke = label => cell(label, 'failed', 'failed', { stage: 'catalogue.stage.fill', failure: 'catalogue.failure.leak' });
  same(whyNot({ cells: [broke('A3'), cell('A1', 'counts', 'noControl'), cell('A2', 'counts', 'noControl')] }), 'A1, A2 no control cell; A3 failed');
  same(whyNot({ cells: [cell('A1', 'waiting', 'noDarkCheck'), cell('A2', 'waiting', 'noLightReading'), broke('A3')] }), 'A1, A2 still open; A3 failed');
});

spec('says above the places what is compared and how cells count', () =>
  same(drawn(wallHead(state, { freshness: { kind: 'live' } }))('.rule'),
    'Power over the control cell’s. The middle one of a team’s cells counts, failures as 0.'));

spec('does not speak of a middle cell where the share of working cells is ranked', () =>
  same(drawn(wallHead({ ...state, metric: 'yield', rule: 'yield.meanOfDeclared' }, { freshness: { kind: 'live' } }))('.rule'),
    'Share of a team’s cells that work; the intervals say how little a few cells prove.'));
