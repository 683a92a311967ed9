/** What the server has just acknowledged, worked into what is known, so that nothing blinks until the next fetch. */

/** The cells with an acknowledged registration, build sheet, outcome or refill in them. */
export function withAccepted(cells, { about, body }, answer) {
  if (about.kind === 'outcome') return cells.map(cell => (cell.id === about.cellId ? withOutcome(cell, body, answer) : cell));
  if (about.kind === 'event') return cells.map(cell => (cell.id === about.cellId ? { ...cell, events: [...(cell.events ?? []).filter(each => each.id !== answer.id), answer] } : cell));
  if (about.kind === 'cell' || about.kind === 'sheet') return [...cells.filter(cell => cell.id !== answer.id), answer];
  return cells;
}

function withOutcome(cell, { replaces }, answer) {
  const others = cell.outcomes.filter(each => each.id !== answer.id);
  return { ...cell, outcomes: [...others.map(each => replacedWhen(each, replaces, answer)), answer] };
}

/** The readings of a cell with an acknowledged one among them. */
export function withReading(readings, { body }, answer) {
  const others = readings.filter(each => each.id !== answer.id);
  return [...others.map(each => replacedWhen(each, body.replaces, answer)), answer];
}

const replacedWhen = (each, replaces, answer) => (each.id === replaces ? { ...each, replacedBy: answer.id } : each);
