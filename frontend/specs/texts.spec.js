import { get } from '/core/http.js';
import { LANGUAGES } from '/core/language.js';
import { t } from '/core/texts.js';
import { same, spec } from './spec.js';

const [english, ...others] = await Promise.all(Object.keys(LANGUAGES).map(key => get(`/texts/${key}.json`)));
const placeholders = sentence => (sentence?.match(/\{\w+\}/g) ?? []).sort().join();

spec('says every sentence in every language', () =>
  same(others.map(texts => Object.keys(english).filter(key => !texts[key])), others.map(() => [])));

spec('says nothing in another language that English does not say', () =>
  same(others.map(texts => Object.keys(texts).filter(key => !english[key])), others.map(() => [])));

spec('fills the same values into a sentence in every language', () =>
  same(others.map(texts => Object.keys(texts).filter(key => placeholders(texts[key]) !== placeholders(english[key]))), others.map(() => [])));

spec('keeps a name that runs from right to left from drawing its sentence along', () =>
  same(['Sloe', '\u05d0\u05d1\u05d2'].map(name => t('{name} leads', { name })), ['Sloe leads', '\u2068\u05d0\u05d1\u05d2\u2069 leads']));

spec('shows markup in a name as it was typed', () =>
  same(t('{name} leads', { name: '<b>Sloe</b>' }), '<b>Sloe</b> leads'));
