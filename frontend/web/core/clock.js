/** The server's time on a device whose own clock may be wrong. */
import { remember, remembered } from './drafts.js';

/** The device's own clock in ms: for how long something takes, never for when it was. Nothing else asks the device. */
export const deviceNow = () => Date.now();

const KEPT = 8;
const JUMP_MS = 5_000;

/**
 * A message takes time, so that what it says of the server's clock is late by a little: the latest of the last few answers
 * is the best one. When the device's own clock jumps, what was known before is forgotten.
 */
export class ServerClock {
  #deviceNow;
  #keep;
  #offsets;

  /**
   * @param {() => number} now the device's clock in ms
   * @param {{offset: ?number, keep: (offset: number) => void}} memory what an earlier page knew, for as long as the server is silent
   */
  constructor(now = deviceNow, { offset, keep } = { offset: null, keep: () => {} }) {
    this.#deviceNow = now;
    this.#keep = keep;
    this.#offsets = Number.isFinite(offset) ? [offset] : [];
  }

  /** The server said its time just now. */
  heard(serverTime) {
    const offset = Date.parse(serverTime) - this.#deviceNow();
    if (!Number.isFinite(offset)) return;
    const kept = Math.abs(offset - this.#offset) > JUMP_MS ? [] : this.#offsets;
    this.#offsets = [...kept, offset].slice(-KEPT);
    this.#keep(this.#offset);
  }

  /** The server's time in ms, as far as it is known. */
  now() {
    return this.#deviceNow() + this.#offset;
  }

  /** The same as text, for entries. */
  stamp() {
    return new Date(this.now()).toISOString();
  }

  get #offset() {
    return this.#offsets.length ? Math.max(...this.#offsets) : 0;
  }
}

/** The one clock of this page. It outlives a reload, so that a phone without a network goes on counting right. */
export const serverClock = new ServerClock(deviceNow, { offset: remembered('serverOffset', null), keep: offset => remember('serverOffset', offset) });
