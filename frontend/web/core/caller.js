/** Who is here, asked for as soon as this module runs: a page needs the answer before it can ask for anything else. */
import { get } from './http.js';

const ask = () => get('/api/access');
let early = ask();
early.catch(() => { /* Whoever asks for it hears of the failure. */ });

/** The first time the early answer, then a new one. */
export function caller() {
  const answer = early ?? ask();
  early = null;
  return answer;
}
