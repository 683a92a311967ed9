/** How far a cell has come: the state of each stage, and what comes next. Pure functions over the server's answers. */

import { setAsideReason } from './words.js';

/** Outcomes that still stand, corrections applied, by stage. */
export function standingOutcomes(cell) {
  const replaced = new Set(cell.outcomes.map(each => each.replaces).filter(Boolean));
  const standing = cell.outcomes.filter(each => !each.replacedBy && !replaced.has(each.id));
  return new Map(standing.map(each => [each.stage, each]));
}

/** Stages of a cell in order, each {key, hot, failures, outcome, state: passed | failed | next | open}. */
export function stagesOf(cell, readings, catalogue) {
  const outcomes = standingOutcomes(cell);
  let ahead = false;
  return catalogue.stages.map(stage => {
    const outcome = outcomes.get(stage.key) ?? null;
    const state = ahead ? 'open' : stateOf(stage, outcome, readings);
    ahead ||= state === 'failed' || state === 'next';
    return { ...stage, outcome, state };
  });
}

/** Measuring needs no outcome of its own: a light reading is one. */
function stateOf(stage, outcome, readings) {
  if (outcome) return outcome.passed ? 'passed' : 'failed';
  return stage.key === 'measure' && has(readings, 'light') ? 'passed' : 'next';
}

/** What to do next: {kind: 'stage' | 'dark' | 'light' | 'sweep' | 'failed' | 'done', stage}. */
export function nextStep(stages, readings) {
  const failed = stages.find(stage => stage.state === 'failed');
  if (failed) return { kind: 'failed', stage: failed };
  const next = stages.find(stage => stage.state === 'next');
  if (next && next.key !== 'measure') return { kind: 'stage', stage: next };
  const stage = stages.find(each => each.key === 'measure');
  const missing = ['dark', 'light', 'sweep'].find(kind => !has(readings, kind));
  return { kind: missing ?? 'done', stage };
}

/** {stageKey: state}, for the drawing of the cell. */
export const statesByStage = stages => Object.fromEntries(stages.map(({ key, state }) => [key, state]));

/** A reading that the teacher set aside is as good as none. */
const has = (readings, kind) => readings.some(reading => reading.kind === kind && !setAsideReason(reading));
