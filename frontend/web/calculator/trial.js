/** The numbers being tried, the ones one began with, and what the server made of both. */
import { Refused } from '../core/http.js';
import { latest } from '../core/latest.js';
import { fromAddress, toAddress } from './address.js';

/** Answers of the server that say: later. */
const LATER = new Set([408, 429]);

/** Fires `changed` whenever there is something new to draw. */
export class Trial extends EventTarget {
  #views;
  #catalogue;
  #asking;
  #answers = new Map();

  constructor(views, catalogue, example) {
    super();
    Object.assign(this, { view: '', tried: example, start: example, problem: null, silent: false });
    this.#views = views;
    this.#catalogue = catalogue;
    this.#asking = latest({
      ask: (wanted, signal) => this.#ask(wanted, signal),
      answered: (answer, wanted) => this.#answered(answer, wanted),
      failed: error => this.#failed(error),
    });
  }

  /** Takes up what an address says; `start` are the numbers one began with, where they are known. */
  open(hash, start) {
    const { view, tried } = fromAddress(hash, this.start);
    if (tried.label !== this.start.label || start) this.start = start ?? tried;
    this.view = view;
    this.change(tried);
  }

  change(change) {
    this.tried = { ...this.tried, ...change };
    this.problem = null;
    this.#follow();
    this.dispatchEvent(new Event('changed'));
  }

  /** What is wanted now has been answered, or there is an earlier answer of this view; null before the first. */
  get now() {
    return this.#answers.get(this.view)?.now ?? null;
  }

  /** The answer to the numbers one began with; null while nothing differs. */
  get before() {
    return this.changed ? this.#answers.get(this.view)?.first ?? null : null;
  }

  get changed() {
    const { keys } = this.#views[this.view];
    return keys.some(key => JSON.stringify(this.start[key]) !== JSON.stringify(this.tried[key]));
  }

  /** Whether a number that is needed is missing or cannot be. */
  get unready() {
    return this.#question(this.tried) === null;
  }

  get address() {
    return toAddress(this.view, this.tried);
  }

  #question(tried) {
    return this.#views[this.view].question(tried, this.#catalogue);
  }

  #follow() {
    const body = this.#question(this.tried);
    if (body === null) this.#asking.forget();
    else this.#asking.want({ view: this.view, body, first: this.#question(this.start) });
  }

  /** The first numbers are asked about once; where they cannot be worked out, nothing is compared. */
  async #ask({ view, body, first }, signal) {
    const { answer } = this.#views[view];
    const kept = this.#answers.get(view);
    const firstText = JSON.stringify(first);
    const now = await answer(body, signal);
    if (firstText === JSON.stringify(body)) return { now, first: now, firstText };
    if (kept?.firstText === firstText) return { ...kept, now };
    return { now, firstText, first: await answer(first, signal).catch(() => null) };
  }

  #answered(answer, { view }) {
    this.#answers.set(view, answer);
    Object.assign(this, { problem: null, silent: false });
    this.dispatchEvent(new Event('changed'));
  }

  #failed(error) {
    const refused = error instanceof Refused;
    Object.assign(this, { problem: refused ? error : null, silent: !refused });
    this.dispatchEvent(new Event('changed'));
    return !refused || LATER.has(error.status) || error.status >= 500;
  }
}
