/**
 * The server puts the modules of a page together in a few files. Each module is a function of what it imports there; it
 * runs once, when it is needed, after what it imports.
 */
const AGAIN_MS = 3_000;

const known = new Map();
const running = new Map();
let fetchLater = () => {};

/**
 * Makes modules known by their addresses, without running them.
 * @param {Object<string, [string[], Function]>} modules what each imports, and the function of it that gives the exports
 * @param {(again: string) => Promise<any>} later fetches those that are imported while the page runs, and adds them;
 *   `again` makes the address another one, since a browser may remember that the first could not be had
 */
export function add(modules, later) {
  Object.entries(modules).forEach(([address, module]) => known.set(address, module));
  fetchLater = later ?? fetchLater;
}

/** The exports of a module by its address, or of a library by its name. */
export function use(name) {
  if (!name.startsWith('/')) return import(name);
  if (!running.has(name)) running.set(name, run(name));
  return running.get(name);
}

/** The address of a module's own file, as `import.meta.url` would have it. */
export const at = address => new URL(`..${address}`, import.meta.url).href;

async function run(name) {
  if (!known.has(name)) await fetchPatiently(0);
  const [imports, module] = known.get(name);
  const exports = [];
  for (const each of imports) exports.push(await use(each));
  return module(...exports);
}

/** On bad Wi-Fi it is worth trying again: without these modules a page stays half. */
async function fetchPatiently(tries) {
  try {
    await fetchLater(tries ? `?again=${tries}` : '');
  } catch {
    await new Promise(resolve => setTimeout(resolve, AGAIN_MS));
    await fetchPatiently(tries + 1);
  }
}
