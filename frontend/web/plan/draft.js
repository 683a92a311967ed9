/** What the form holds before it is sent. */

/** A first plan: one thing in two levels, on the day's number of cells, with what a school has at hand. */
export const firstDraft = (day, teams) => ({
  teams: teams.length || 8,
  cellsPerTeam: day.cellsPerTeam,
  factors: [],
  fixed: [{ parameter: 'bakeTemperature', text: '450', unit: 'degC' }, { parameter: 'bakeTime', text: '30', unit: 'min' }],
  forbidden: [],
  heaters: [{ name: 'A', positions: 12 }, { name: 'B', positions: 12 }],
  stations: 3,
  minutes: 300,
  ratio: 2,
  spread: null,
  standardCell: true,
  undyedControl: true,
  wastePercent: 25,
});

/** The draft with a level added to what is varied; what was the same for all is so no more. */
export function withLevel(draft, parameter, level) {
  const known = draft.factors.find(factor => factor.parameter === parameter);
  const factors = known
    ? draft.factors.map(factor => (factor === known ? { ...factor, levels: [...factor.levels, level] } : factor))
    : [...draft.factors, { parameter, levels: [level] }];
  return { ...draft, factors, fixed: draft.fixed.filter(value => value.parameter !== parameter) };
}

/** The draft without a level; a factor without levels is gone, and so are the rules that name it. */
export function withoutLevel(draft, parameter, place) {
  const gone = draft.factors.find(factor => factor.parameter === parameter).levels[place];
  const factors = draft.factors
    .map(factor => (factor.parameter === parameter ? { ...factor, levels: factor.levels.filter((_, i) => i !== place) } : factor))
    .filter(factor => factor.levels.length > 0);
  return { ...draft, factors, forbidden: draft.forbidden.filter(rule => !rule.levels.some(level => level.parameter === parameter && level.text === gone.text && level.unit === gone.unit)) };
}

export const withFactor = (draft, parameter) => (draft.factors.some(factor => factor.parameter === parameter) ? draft
  : { ...draft, factors: [...draft.factors, { parameter, levels: [] }], fixed: draft.fixed.filter(value => value.parameter !== parameter) });

export const withFixed = (draft, value) => ({ ...draft, fixed: [...draft.fixed.filter(each => each.parameter !== value.parameter), value] });

/** Parameters that are not varied yet; one that was to be the same for all may become so. */
export const comparableParameters = (draft, { parameters }) => parameters.filter(({ key }) => !draft.factors.some(({ parameter }) => parameter === key));

/** Parameters that are neither varied nor the same for all. */
export function openParameters(draft, { parameters }) {
  const taken = new Set([...draft.factors, ...draft.fixed].map(({ parameter }) => parameter));
  return parameters.filter(({ key }) => !taken.has(key));
}
