import { backoffMs } from '../core/backoff.js';

/** The server beats every 10 s; two missed beats and a little grace mean that the socket died without a word. */
export const SILENCE_MS = 25_000;

/** One socket at a time, opened again with growing patience whenever it closes or falls silent. */
export class Line {
  #ways;
  #ears;
  #socket = null;
  #drops = 0;
  #stopListening = () => {};
  #cancelReconnect = null;

  /**
   * @param {object} ways
   * @param {(ears: {opened: () => void, heard: (message: object) => void, closed: () => void}) => {close: () => void}}
   *   ways.openSocket connects and subscribes
   * @param {{now: () => number, after: (ms: number, action: () => void) => () => void}} ways.clock
   * @param {() => number} ways.random in [0, 1)
   * @param {{dialling: () => void, opened: () => void, heard: (message: object) => void, lost: () => void}} ears
   */
  constructor(ways, ears) {
    this.#ways = ways;
    this.#ears = ears;
  }

  dial() {
    this.hangUp();
    const socket = this.#ways.openSocket(this.#earsOf({ open: true }));
    this.#socket = socket;
    this.#ears.dialling();
  }

  hangUp() {
    this.#cancelReconnect?.();
    this.#cancelReconnect = null;
    this.#stopListening();
    this.#socket?.close();
    this.#socket = null;
  }

  /** The network or the page came back: a line that waits to dial again dials now. */
  hurry() {
    if (this.#cancelReconnect) this.dial();
  }

  /** Ears for one socket, deaf as soon as another one takes its place. */
  #earsOf(ear) {
    const ifOpen = (action) => (value) => ear.open && action(value);
    const lose = ifOpen(() => this.#lose());
    let cancelSilence = this.#ways.clock.after(SILENCE_MS, lose);
    this.#stopListening = () => {
      ear.open = false;
      cancelSilence();
    };
    return {
      opened: ifOpen(() => this.#ears.opened()),
      closed: lose,
      heard: ifOpen((message) => {
        this.#drops = 0;
        cancelSilence();
        cancelSilence = this.#ways.clock.after(SILENCE_MS, lose);
        this.#ears.heard(message);
      }),
    };
  }

  #lose() {
    this.hangUp();
    const patience = backoffMs(this.#drops++, this.#ways.random);
    this.#cancelReconnect = this.#ways.clock.after(patience, () => this.dial());
    this.#ears.lost();
  }
}
