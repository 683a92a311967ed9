import { backoffMs } from '../core/backoff.js';

/** Fetches the snapshot, one request at a time; an answer that a newer request has overtaken is not heard. */
export class Snapshots {
  #ways;
  #ears;
  #current = null;
  #tries = 0;
  #cancelRetry = () => {};

  /**
   * @param {{fetchSnapshot: () => Promise<object>, clock: {after: Function}, random: () => number}} ways
   * @param {{arrived: (snapshot: object) => void, refused: (problem: unknown) => void}} ears
   */
  constructor(ways, ears) {
    this.#ways = ways;
    this.#ears = ears;
  }

  /** Asks at once. */
  ask() {
    this.stop();
    const request = {};
    this.#current = request;
    const ifCurrent = (action) => (value) => this.#current === request && action(value);
    this.#ways.fetchSnapshot().then(ifCurrent(this.#ears.arrived), ifCurrent(this.#ears.refused));
  }

  /** Asks again after a while, a longer one each time until `satisfied`. */
  askLater() {
    this.stop();
    const patience = backoffMs(this.#tries++, this.#ways.random);
    this.#cancelRetry = this.#ways.clock.after(patience, () => this.ask());
  }

  satisfied() {
    this.#tries = 0;
  }

  stop() {
    this.#current = null;
    this.#cancelRetry();
  }
}
