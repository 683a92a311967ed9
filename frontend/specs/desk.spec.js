import { whereIs } from '/desk/whereabouts.js';
import { same, spec } from './spec.js';

const STAGES = ['film', 'bake', 'dye', 'counterElectrode', 'fill', 'measure'];
const cell = (...outcomes) => ({ outcomes: outcomes.map(([stage, passed, replacedBy = null]) => ({ stage, passed, replacedBy })) });
const passed = (...stages) => cell(...stages.map(stage => [stage, true]));

spec('finds a cell at the first stage it has not passed', () =>
  same(whereIs(passed('film', 'bake'), STAGES, undefined), { at: 'dye', state: 'building' }));

spec('finds a failed cell where it failed', () =>
  same(whereIs(cell(['film', true], ['bake', false]), STAGES, undefined), { at: 'bake', state: 'failed' }));

spec('forgets an outcome that was corrected', () =>
  same(whereIs(cell(['film', false, 'later'], ['film', true]), STAGES, undefined), { at: 'bake', state: 'building' }));

spec('finds a filled cell without a result waiting at the measurement', () =>
  same(whereIs(passed(...STAGES.slice(0, 5)), STAGES, { standing: 'waiting' }), { at: 'measure', state: 'waits' }));

spec('finds a cell that counts in the last column', () =>
  same(whereIs(passed(...STAGES), STAGES, { standing: 'counts', ranked: true }), { at: 'counts', state: 'counts' }));

spec('leaves a cell with a result at the measurement until the ranking takes it', () =>
  same(whereIs(passed(...STAGES), STAGES, { standing: 'counts', ranked: false }), { at: 'measure', state: 'unranked' }));
