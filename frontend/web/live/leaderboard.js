import { get } from '../core/http.js';
import { browserClock } from './clock.js';
import { Link } from './link.js';
import { openStomp } from './stomp.js';

/** Follows the leaderboard of a lab day; `body` is its newest state. */
export function followLeaderboard(labDayId) {
  const link = new Link({
    openSocket: ears => openStomp(`/topic/labday.${labDayId}.leaderboard`, ears),
    fetchSnapshot: () => get(`/api/labdays/${labDayId}/leaderboard`),
    clock: browserClock,
    random: Math.random,
  });
  addEventListener('online', () => link.hurry());
  document.addEventListener('visibilitychange', () => document.hidden || link.hurry());
  return link.start();
}
