import { codesOf, gatesOf, hazardsOf } from '/safety/hazards.js';
import { same, spec } from './spec.js';

const catalogue = {
  zones: [{ key: 'heat', gated: true }, { key: 'flame', gated: true }, { key: 'flammables', gated: false }],
  hazards: [
    { key: 'hotPlate', zone: 'heat', codes: [] }, { key: 'burner', zone: 'flame', codes: [] },
    { key: 'alcohol', zone: 'flammables', codes: ['H225', 'H319'] }, { key: 'glycol', zone: 'iodine', codes: ['H319'] },
  ],
  triggers: [
    { hazard: 'hotPlate', stage: 'bake', parameter: 'heater', levels: ['oven', 'burnerOnGauze'], unrecorded: true },
    { hazard: 'burner', stage: 'bake', parameter: 'heater', levels: ['burnerOnGauze'], unrecorded: false },
    { hazard: 'alcohol', stage: 'dye', parameter: 'rinse', levels: ['alcohol'], unrecorded: false },
    { hazard: 'alcohol', stage: 'dye', parameter: 'dyeSolvent', levels: ['alcohol'], unrecorded: false },
    { hazard: 'glycol', stage: 'fill', parameter: null, levels: [], unrecorded: true },
  ],
};
const keys = (stage, ...recipe) => hazardsOf(catalogue, stage, recipe.map(([parameter, text]) => ({ parameter, text }))).map(({ key }) => key);

spec('names what a recipe brings', () => same(keys('bake', ['heater', 'burnerOnGauze']), ['hotPlate', 'burner']));
spec('takes what is not recorded for the usual way', () => {
  same(keys('bake'), ['hotPlate']);
  same(keys('bake', ['heater', ' ']), ['hotPlate']);
});
spec('leaves out what a recipe does without', () => same(keys('bake', ['heater', 'none']), []));
spec('names what a stage always brings', () => same(keys('fill'), ['glycol']));
spec('names a hazard once', () => same(keys('dye', ['rinse', 'alcohol'], ['dyeSolvent', 'alcohol']), ['alcohol']));
spec('asks for a sign-off in gated zones only', () => {
  same(gatesOf(catalogue, hazardsOf(catalogue, 'bake', [{ parameter: 'heater', text: 'burnerOnGauze' }])), ['heat', 'flame']);
  same(gatesOf(catalogue, hazardsOf(catalogue, 'dye', [{ parameter: 'rinse', text: 'alcohol' }])), []);
});
spec('names a code once', () => same(codesOf(catalogue.hazards), ['H225', 'H319']));
