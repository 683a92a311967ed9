/** The languages of the pages, and which of them this browser shows. */

/**
 * One file of texts each, `texts/KEY.json`. `numbers` and `dates` say how those are written; `decimal` and `group` are the
 * marks of a number. German parts thousands by a thin space, not by the point that somebody may read as a decimal mark.
 */
export const LANGUAGES = Object.freeze({
  en: { name: 'English', numbers: 'en', decimal: '.', group: ',', dates: 'en-GB' },
  de: { name: 'Deutsch', numbers: 'de-DE', decimal: ',', group: '\u202f', dates: 'de-DE' },
});

const KEPT = 'berrywatt.language';
const FALLBACK = 'en';

/** The first of the wanted languages that there is, whatever its region: ['de-AT', 'en'] -> 'de'. */
export function firstKnown(wanted) {
  const keys = wanted.filter(Boolean).map(each => each.toLowerCase().split('-')[0]);
  return keys.find(key => Object.hasOwn(LANGUAGES, key)) ?? FALLBACK;
}

/** What was chosen in this browser, else what the browser asks for. */
export const language = firstKnown([chosen(), ...(globalThis.navigator?.languages ?? [])]);

/** How this language writes numbers and dates. */
export const { dates: DATES, numbers: NUMBERS, decimal: DECIMAL, group: GROUP } = LANGUAGES[language];

/** Keeps the choice for this browser and shows the page anew. */
export function choose(key) {
  try {
    localStorage.setItem(KEPT, key);
  } catch {
    // A private tab may refuse storage; the browser's own language goes on.
  }
  location.reload();
}

function chosen() {
  try {
    return localStorage.getItem(KEPT);
  } catch {
    return null;
  }
}

if (globalThis.document) document.documentElement.lang = language;
