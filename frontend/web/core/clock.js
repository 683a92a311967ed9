/** The server's time on a device whose own clock may be wrong. */

const KEPT = 8;
const JUMP_MS = 5_000;

/**
 * A message takes time, so that what it says of the server's clock is late by a little: the latest of the last few answers
 * is the best one. When the device's own clock jumps, what was known before is forgotten.
 */
export class ServerClock {
  #deviceNow;
  #offsets = [];

  /** @param {() => number} deviceNow the device's clock in ms */
  constructor(deviceNow = Date.now) {
    this.#deviceNow = deviceNow;
  }

  /** The server said its time just now. */
  heard(serverTime) {
    const offset = Date.parse(serverTime) - this.#deviceNow();
    if (!Number.isFinite(offset)) return;
    const kept = Math.abs(offset - this.#offset) > JUMP_MS ? [] : this.#offsets;
    this.#offsets = [...kept, offset].slice(-KEPT);
  }

  /** The server's time in ms, as far as it is known. */
  now() {
    return this.#deviceNow() + this.#offset;
  }

  get #offset() {
    return this.#offsets.length ? Math.max(...this.#offsets) : 0;
  }
}

/** The one clock of this page. */
export const serverClock = new ServerClock();
