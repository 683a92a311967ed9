/**
 * Entries on their way to the server. Each is stored on the phone before it is sent, sent in order with the id made here
 * (so that sending twice stores once), and kept until the server has answered.
 *
 * States of an entry: `waiting` (stored here, not yet acknowledged), `refused` (the server said no; `problem` says why).
 * An acknowledged entry leaves the outbox.
 */
import { backoffMs } from '../core/backoff.js';
import { fateOf } from './fate.js';

const CLAIM_MS = 15_000;

/** Fires `changed` when entries or state change and `sent` with {entry, answer} after each acknowledgement. */
export class Outbox extends EventTarget {
  #store; #put; #clock; #random; #owner;
  #tries = 0;
  #timer = null;
  #running = null;
  #wanted = false;

  /** @param parts {store, put(path, body), clock: {now, wall, after(ms, task), cancel(timer)}, random(), owner} */
  constructor({ store, put, clock, random, owner }) {
    super();
    this.#store = store;
    this.#put = put;
    this.#clock = clock;
    this.#random = random;
    this.#owner = owner;
    this.entries = [];
    this.signInNeeded = false;
  }

  /** Reads what an earlier page or another tab left, and starts sending. */
  async start() {
    await this.refresh();
    return this.drain();
  }

  async refresh() {
    this.entries = await this.#store.all();
    this.#tell('changed');
  }

  /**
   * Stores an entry; resolves once it is safe on this phone, and sends it in the background.
   * @param entry {id, path, body, about: {kind, cellId, teamId, after, ...}}; `cellId` and `after` name entries that must
   *   be with the server first; an id that is here already is replaced (a corrected entry after a refusal)
   */
  async add(entry) {
    const earlier = this.entries.find(each => each.id === entry.id);
    const stored = { ...entry, order: earlier?.order ?? this.#nextOrder(), state: 'waiting', problem: null, madeAt: this.#clock.wall() };
    await this.#store.put(stored);
    await this.refresh();
    this.drain();
    return stored;
  }

  /** Gives an entry up, and those that wait for it. */
  async discard(id) {
    for (const entry of this.entries.filter(each => each.id === id || waitsFor(each, id))) {
      await this.#store.remove(entry.id);
    }
    await this.refresh();
  }

  /** Sends what waits; a call that comes while it runs makes it look once more. After signing in, call it again. */
  drain() {
    this.#wanted = true;
    this.#running ??= this.#drainWhileWanted();
    return this.#running;
  }

  async #drainWhileWanted() {
    try {
      while (this.#wanted) {
        this.#wanted = false;
        await this.#drainClaimed();
      }
    } finally {
      this.#running = null;
    }
  }

  async #drainClaimed() {
    this.#clock.cancel(this.#timer);
    this.signInNeeded = false;
    if (!await this.#claim()) return this.#later();
    try {
      while (await this.#sendNext()) { /* until nothing is left or the server is silent */ }
    } finally {
      await this.#store.release(this.#owner);
    }
    return undefined;
  }

  #claim() {
    const now = this.#clock.now();
    return this.#store.claim(this.#owner, now, now + CLAIM_MS);
  }

  /** True when the next one may be tried. */
  async #sendNext() {
    await this.refresh();
    const entry = this.entries.find(each => each.state === 'waiting' && !this.#held(each));
    if (!entry || !await this.#claim()) return false;
    try {
      await this.#acknowledged(entry, await this.#put(entry.path, entry.body));
      return true;
    } catch (error) {
      return this.#failed(entry, error);
    }
  }

  /** What was refused holds back what was recorded about it. */
  #held(entry) {
    return this.entries.some(each => each.state === 'refused' && each.id !== entry.id && waitsFor(entry, each.id));
  }

  async #acknowledged(entry, answer) {
    this.#tries = 0;
    await this.#store.remove(entry.id);
    await this.refresh();
    this.#tell('sent', { entry, answer });
  }

  async #failed(entry, error) {
    const fate = fateOf(error);
    if (fate === 'keep') return this.#refuse(entry, error);
    if (fate === 'signIn') this.signInNeeded = true;
    else this.#later();
    this.#tell('changed');
    return false;
  }

  async #refuse(entry, error) {
    const { status, code, detail, field, wayOut, choices } = error;
    await this.#store.put({ ...entry, state: 'refused', problem: { status, code, detail, field, wayOut, choices } });
    await this.refresh();
    return true;
  }

  #later() {
    this.#timer = this.#clock.after(backoffMs(this.#tries++, this.#random), () => this.drain());
  }

  #nextOrder() {
    return Math.max(this.#clock.now(), ...this.entries.map(each => each.order + 1));
  }

  #tell(type, detail) {
    this.dispatchEvent(new CustomEvent(type, { detail }));
  }
}

const waitsFor = ({ about }, id) => about.cellId === id || about.after === id;

