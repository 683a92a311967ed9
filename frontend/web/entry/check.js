/** Checks every entry of a form at once: shows what is wrong and moves to the first fault. */

const ENTRIES = 'bw-entry, bw-area';

/** {ready, unusual}: ready when every entry may be sent; unusual when one holds a confirmed unusual number. */
export async function checkEntries(form) {
  const entries = [...form.querySelectorAll(ENTRIES)];
  const verdicts = entries.map(entry => entry.check());
  await Promise.all(entries.map(entry => entry.updateComplete));
  const faulty = entries.find((entry, i) => !verdicts[i].ready);
  if (faulty) reveal(faulty);
  return { ready: !faulty, unusual: verdicts.some(verdict => verdict.unusual) };
}

/** Shows the server's refusal at the field it names; false when no field here has that name. */
export function complainAt(form, field, sentence) {
  const entry = [...form.querySelectorAll(`${ENTRIES}, bw-field, bw-choices, bw-picker`)].find(each => each.name === field);
  if (!entry) return false;
  entry.complaint = sentence;
  reveal(entry);
  return true;
}

function reveal(entry) {
  entry.closest('details')?.setAttribute('open', '');
  entry.focus();
}
