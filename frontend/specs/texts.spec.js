import { get } from '/core/http.js';
import { LANGUAGES } from '/core/language.js';
import { same, spec } from './spec.js';

const [english, ...others] = await Promise.all(Object.keys(LANGUAGES).map(key => get(`/texts/${key}.json`)));
const placeholders = sentence => (sentence?.match(/\{\w+\}/g) ?? []).sort().join();

spec('says every sentence in every language', () =>
  same(others.map(texts => Object.keys(english).filter(key => !texts[key])), others.map(() => [])));

spec('says nothing in another language that English does not say', () =>
  same(others.map(texts => Object.keys(texts).filter(key => !english[key])), others.map(() => [])));

spec('fills the same values into a sentence in every language', () =>
  same(others.map(texts => Object.keys(texts).filter(key => placeholders(texts[key]) !== placeholders(english[key]))), others.map(() => [])));
