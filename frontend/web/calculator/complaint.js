/** Puts the server's refusal beside the number that it names, without taking the person away from where they type. */

/** @returns {boolean} whether a field of this view has that name */
export function complainBeside(root, problem, names) {
  const [, row] = /^points\[(\d+)\]/.exec(problem.field ?? '') ?? [];
  if (problem.field?.startsWith('points')) return markRows(root, problem.detail, row);
  const name = names[problem.field] ?? problem.field;
  const field = [...root.querySelectorAll('bw-entry, bw-choices, bw-picker')].find(each => each.name === name);
  if (!field) return false;
  field.complaint = problem.detail;
  return true;
}

function markRows(root, sentence, row) {
  const place = root.querySelector('[data-rows]');
  if (!place) return false;
  place.textContent = sentence;
  const filled = [...root.querySelectorAll('[data-row]')].filter(each => [...each.querySelectorAll('input')].some(({ value }) => value.trim()));
  if (row !== undefined) filled[row]?.querySelector('input').setAttribute('aria-invalid', 'true');
  return true;
}

export function clearRows(root) {
  const place = root.querySelector('[data-rows]');
  if (place) place.textContent = '';
}
