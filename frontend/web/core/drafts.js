/** What is being typed, kept on this device from the first keystroke, so that reload and back lose nothing. */

const PREFIX = 'berrywatt.draft.';
const memory = new Map();

/** The draft under a key, or the given start. */
export function draftOf(key, start) {
  return read(PREFIX + key) ?? start;
}

export function keepDraft(key, value) {
  write(PREFIX + key, value);
}

export function dropDraft(key) {
  memory.delete(PREFIX + key);
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // Nothing was stored where storage is refused.
  }
}

/** A choice remembered on this phone, such as the last unit of a field. */
export const remembered = (key, otherwise) => read(`berrywatt.last.${key}`) ?? otherwise;
export const remember = (key, value) => write(`berrywatt.last.${key}`, value);

function read(key) {
  try {
    return JSON.parse(localStorage.getItem(key)) ?? memory.get(key);
  } catch {
    return memory.get(key);
  }
}

function write(key, value) {
  memory.set(key, value);
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // A private tab may refuse storage; the draft then lives as long as the page.
  }
}
