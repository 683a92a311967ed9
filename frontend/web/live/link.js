import { Line } from './line.js';
import { UNHEARD, heard, snapshotArrived, subscribed } from './sequence.js';
import { Snapshots } from './snapshots.js';

/**
 * Keeps one live topic up to date over a connection that comes and goes. Fires `change` when `body`, `freshness` or
 * `problem` may have changed. The last good picture is never given up.
 */
export class Link extends EventTarget {
  #clock;
  #line;
  #snapshots;
  #sequence = UNHEARD;
  #listening = false;
  #confirmedAt = null;
  #problem = null;

  /** @param {object} ways `openSocket`, `fetchSnapshot`, `clock` and `random` as in `Line` and `Snapshots` */
  constructor(ways) {
    super();
    this.#clock = ways.clock;
    this.#snapshots = new Snapshots(ways, {
      arrived: (snapshot) => this.#arrive(snapshot),
      refused: (problem) => this.#refuse(problem),
    });
    this.#line = new Line(ways, {
      dialling: () => this.#snapshots.ask(), // the first picture does not wait for the socket
      opened: () => this.#open(),
      heard: (message) => this.#hear(message),
      lost: () => this.#lose(),
    });
  }

  /** The newest whole state, or null before the first. */
  get body() {
    return this.#sequence.body;
  }

  /** What stood in the way of the last snapshot, or null. */
  get problem() {
    return this.#problem;
  }

  /** `waiting` before the first picture, then `live`, or `stale` with the time in milliseconds it was last known true. */
  get freshness() {
    if (this.body === null) return { kind: 'waiting', at: null };
    const live = this.#listening && !this.#sequence.wanting;
    return { kind: live ? 'live' : 'stale', at: this.#confirmedAt };
  }

  start() {
    this.#line.dial();
    return this;
  }

  stop() {
    this.#line.hangUp();
    this.#snapshots.stop();
  }

  /** The network or the page came back. */
  hurry() {
    this.#line.hurry();
  }

  #open() {
    this.#listening = true;
    this.#become(subscribed(this.#sequence));
    this.#snapshots.ask();
  }

  #hear(message) {
    const wasWanting = this.#sequence.wanting;
    this.#become(heard(this.#sequence, message));
    if (this.#sequence.wanting && !wasWanting) this.#snapshots.ask();
  }

  #arrive(snapshot) {
    this.#problem = null;
    this.#become(snapshotArrived(this.#sequence, snapshot));
    if (this.#sequence.wanting) this.#snapshots.askLater();
    else this.#snapshots.satisfied();
  }

  #refuse(problem) {
    this.#problem = problem;
    this.#snapshots.askLater();
    this.#tell();
  }

  #lose() {
    this.#listening = false;
    this.#tell();
  }

  #become(sequence) {
    this.#sequence = sequence;
    if (!sequence.wanting) this.#confirmedAt = this.#clock.now();
    this.#tell();
  }

  #tell() {
    this.dispatchEvent(new Event('change'));
  }
}
