import { nextStep, stagesOf, statesByStage } from '/bench/progress.js';
import { same, spec } from './spec.js';

const catalogue = { stages: ['film', 'bake', 'dye', 'measure'].map(key => ({ key, hot: key === 'bake', failures: [] })) };
const passed = (stage, id = stage) => ({ id, stage, passed: true, failure: null, replacedBy: null });
const failed = (stage, id = stage) => ({ id, stage, passed: false, failure: 'washedOff', replacedBy: null });
const states = (outcomes, readings = []) => Object.values(statesByStage(stagesOf({ outcomes }, readings, catalogue)));
const next = (outcomes, readings = []) => {
  const { kind, stage } = nextStep(stagesOf({ outcomes }, readings, catalogue), readings);
  return [kind, stage.key];
};
const reading = kind => ({ kind });

spec('starts a new cell at its first stage', () => same(states([]), ['next', 'open', 'open', 'open']));
spec('goes on after each stage that worked', () => same(next([passed('film')]), ['stage', 'bake']));
spec('ends at the stage that failed', () => {
  same(states([passed('film'), failed('bake')]), ['passed', 'failed', 'open', 'open']);
  same(next([passed('film'), failed('bake')]), ['failed', 'bake']);
});
spec('follows a correction', () =>
  same(states([{ ...failed('film', 'a'), replacedBy: 'b' }, passed('film', 'b')])[0], 'passed'));
spec('follows a correction that is still on this phone', () =>
  same(states([failed('film', 'a'), { ...passed('film', 'b'), replaces: 'a', pending: 'waiting' }])[0], 'passed'));
spec('asks for the dark check before the light reading, and for a sweep last', () => {
  const built = [passed('film'), passed('bake'), passed('dye')];
  same(next(built), ['dark', 'measure']);
  same(next(built, [reading('dark')]), ['light', 'measure']);
  same(next(built, [reading('dark'), reading('light')]), ['sweep', 'measure']);
  same(next(built, [reading('dark'), reading('light'), reading('sweep')]), ['done', 'measure']);
});

spec('asks again for a reading that the teacher set aside, and not for one that counts again', () => {
  const lit = reasons => ({ kind: 'light', setAside: reasons.map(reason => ({ reason })) });
  const stages = readings => stagesOf({ outcomes: [] }, readings, { stages: [{ key: 'measure' }] });
  same([stages([lit(['clip'])])[0].state, stages([lit(['clip', null])])[0].state], ['next', 'passed']);
});
