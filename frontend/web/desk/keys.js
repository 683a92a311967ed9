/** Shortcuts of the Desk: single letters, which a person may switch off (WCAG 2.2, criterion 2.1.4). */

const KEPT = 'berrywatt.desk.letters';
const WRITING = 'input, select, textarea, [contenteditable]';

export const LETTERS = ['n', 'j', 'k', 'c', 'p'];

export const lettersOn = () => read() !== 'off';

export function switchLetters(on) {
  try {
    localStorage.setItem(KEPT, on ? 'on' : 'off');
  } catch {
    // A private tab may refuse storage; the letters then come back with the next page.
  }
}

function read() {
  try {
    return localStorage.getItem(KEPT);
  } catch {
    return null;
  }
}

/** Calls `acts[letter]()` for a letter typed outside of fields and dialogs, without Ctrl, Alt or Meta. */
export function listen(acts) {
  addEventListener('keydown', event => {
    const act = acts[event.key];
    if (!act || event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
    if (!lettersOn() || event.target.closest?.(WRITING) || document.querySelector('dialog[open]')) return;
    event.preventDefault();
    act();
  });
}

/** Moves the focus along the elements of a list, from where it is; `by` is +1 or -1. */
export function step(elements, by) {
  const at = elements.findIndex(each => each.contains(document.activeElement));
  elements[Math.min(elements.length - 1, Math.max(0, at < 0 ? 0 : at + by))]?.focus();
}
