/** Round numbers for an axis: at most `most` steps from 0 to a little beyond `high`: (93, 4) -> [0, 25, 50, 75, 100]. */
export function ticks(high, most = 5) {
  const size = roundStep(high / most);
  const count = Math.ceil(high / size - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => i * size);
}

/** The next step of 1, 2, 2.5 or 5 times a power of ten. */
function roundStep(least) {
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 2.5, 5, 10].map(times => times * power).find(step => step >= least * (1 - 1e-9));
}
