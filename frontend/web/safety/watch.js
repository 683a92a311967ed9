/** The safety catalogue and the sign-offs of a day, asked for again while somebody looks at them. */
import { serverClock } from '../core/clock.js';
import { get } from '../core/http.js';

/** Mostly the room tells of a change; this is for a phone that did not hear it. */
const AGAIN_MS = 30_000;

/** Fires `changed` whenever something to draw is new. Several elements of a page share one. */
class SafetyWatch extends EventTarget {
  catalogue = null;
  signOffs = [];
  #labDayId = null;
  #watchers = 0;
  #timer = null;

  constructor() {
    super();
    document.addEventListener('visibilitychange', () => { if (this.#watchers && !document.hidden) this.#again(); });
  }

  /** Begins to ask; the answer is a function that ends it. The day may be unknown: then only the catalogue is asked for. */
  start(labDayId, listener) {
    this.#labDayId = labDayId ?? this.#labDayId;
    this.addEventListener('changed', listener);
    this.#watchers += 1;
    this.#again();
    return () => this.#end(listener);
  }

  /** The server's clock in ms. */
  now() {
    return serverClock.now();
  }

  async refresh() {
    await Promise.allSettled([this.#askCatalogue(), this.#askSignOffs()]);
    this.dispatchEvent(new Event('changed'));
  }

  async #again() {
    clearTimeout(this.#timer);
    if (!document.hidden) await this.refresh();
    clearTimeout(this.#timer);
    if (this.#watchers) this.#timer = setTimeout(() => this.#again(), AGAIN_MS);
  }

  #end(listener) {
    this.removeEventListener('changed', listener);
    this.#watchers -= 1;
    if (!this.#watchers) clearTimeout(this.#timer);
  }

  async #askCatalogue() {
    this.catalogue ??= await get('/api/safety');
  }

  async #askSignOffs() {
    if (!this.#labDayId) return;
    const { serverTime, signOffs } = await get(`/api/labdays/${this.#labDayId}/sign-offs`);
    serverClock.heard(serverTime);
    this.signOffs = signOffs;
  }
}

export const safetyWatch = new SafetyWatch();
