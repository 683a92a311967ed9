/** A tiny spec runner: describe nothing, name everything. Results go to window.specResults for the test that waits. */
const specs = [];

/** Registers a spec; `body` may be async and throws when the sentence does not hold. */
export const spec = (sentence, body) => specs.push({ sentence, body });

/** Runs all registered specs in order and publishes {sentence, failure} for each. */
export async function run() {
  const results = [];
  for (const { sentence, body } of specs) {
    results.push({ sentence, failure: await failureOf(body) });
  }
  globalThis.specResults = results;
}

async function failureOf(body) {
  try {
    await body();
    return null;
  } catch (error) {
    return error.stack ?? String(error);
  }
}

/** Equality by content. */
export function same(actual, expected, about = '') {
  const [a, b] = [actual, expected].map(value => JSON.stringify(value));
  if (a !== b) throw new Error(`${about} expected ${b} but was ${a}`);
}

/** Equality of numbers within a few units in the last place. */
export function close(actual, expected, about = '') {
  const scale = Math.max(Math.abs(expected), Number.MIN_VALUE);
  if (!(Math.abs(actual - expected) <= 1e-12 * scale)) throw new Error(`${about} expected ${expected} but was ${actual}`);
}

/** The error that `body` throws; failing when it does not. */
export async function thrownBy(body) {
  try {
    await body();
  } catch (error) {
    return error;
  }
  throw new Error('expected an error but there was none');
}
