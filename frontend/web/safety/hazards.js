/** Which hazards a step brings. Pure functions over the server's catalogue, so that a phone without a network knows, too. */

/** Hazards of a stage, in the order of its work; `recipe` is [{parameter, text}]. What is not recorded counts as the usual way. */
export function hazardsOf(catalogue, stage, recipe) {
  const keys = new Set(catalogue.triggers.filter(trigger => trigger.stage === stage && isThere(trigger, recipe)).map(trigger => trigger.hazard));
  return [...keys].map(key => catalogue.hazards.find(hazard => hazard.key === key));
}

/** Keys of the zones that a team must be signed off for before the stage counts as done. */
export function gatesOf(catalogue, hazards) {
  return catalogue.zones.filter(zone => zone.gated && hazards.some(hazard => hazard.zone === zone.key)).map(zone => zone.key);
}

/** GHS codes of these hazards, each once. */
export const codesOf = hazards => [...new Set(hazards.flatMap(hazard => hazard.codes))];

function isThere({ parameter, levels, unrecorded }, recipe) {
  if (parameter == null) return true;
  const text = recipe.find(entry => entry.parameter === parameter)?.text?.trim();
  return text ? levels.includes(text) : unrecorded;
}
