import { serverClock } from '../core/clock.js';

/** The page's clock behind the two questions that `Link` asks, so that a spec can hold it still. */
export const browserClock = {
  now: () => serverClock.now(),

  /** Runs `action` once after `ms`; the answer cancels it. */
  after(ms, action) {
    const timer = setTimeout(action, ms);
    return () => clearTimeout(timer);
  },
};
