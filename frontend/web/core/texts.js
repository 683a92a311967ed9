/** Every sentence a person reads comes from one catalogue: t('page.bench.title'), t(key, { name: 'value' }). */
import { file } from './http.js';
import { plain } from './format.js';
import { language } from './language.js';

const KEPT = `berrywatt.texts.${language}`;

async function load() {
  try {
    const fresh = await file(new URL(`../texts/${language}.json`, import.meta.url));
    keep(fresh);
    return fresh;
  } catch (unreachable) {
    return kept();
  }
}

function keep(texts) {
  try {
    localStorage.setItem(KEPT, JSON.stringify(texts));
  } catch {
    // A private tab may refuse storage; the catalogue then lives for this page only.
  }
}

function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEPT)) ?? {};
  } catch {
    return {};
  }
}

const catalogue = await load();

/** The sentence with its {placeholders} filled; the key itself when the catalogue has none, so that a gap is seen. */
export function t(key, values = {}) {
  const sentence = catalogue[key] ?? key;
  return sentence.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? show(values[name]) : whole));
}

/** Whether the catalogue has this sentence. */
export const has = key => key in catalogue;

/** A remark of the server ({key, values}) as a sentence; a value may name a text of the catalogue, such as a stage. */
export const remark = ({ key, values }) => t(key, values ?? {});

const show = value => (typeof value === 'number' ? plain(value) : (catalogue[value] ?? apart(String(value))));

/** Letters that run from right to left; a name of them would draw the words beside it along. */
const LEFTWARD = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** What somebody typed keeps its direction to itself (Unicode Standard Annex 9, isolates). */
const apart = text => (LEFTWARD.test(text) ? `\u2068${text}\u2069` : text);
