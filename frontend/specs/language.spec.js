import { LANGUAGES, firstKnown } from '/core/language.js';
import { same, spec } from './spec.js';

spec('takes the first language that it has, whatever the region', () => same(firstKnown(['fr-CH', 'de-AT', 'en']), 'de'));

spec('takes what was chosen before what the browser asks for', () => same(firstKnown(['en', 'de-DE']), 'en'));

spec('falls back to English', () => same(firstKnown([null, 'fr', 'it-IT']), 'en'));

spec('is not deceived by names that every object has', () => same(firstKnown(['constructor', 'toString']), 'en'));

spec('names each language in itself', () => same(Object.values(LANGUAGES).map(each => each.name), ['English', 'Deutsch']));
