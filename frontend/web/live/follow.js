import { get } from '../core/http.js';
import { browserClock } from './clock.js';
import { Link } from './link.js';
import { openStomp } from './stomp.js';

/** Follows a topic of a lab day; `body` is its newest state. `kind` is the topic's last part and its snapshot's address. */
export function follow(labDayId, kind) {
  const link = new Link({
    openSocket: ears => openStomp(`/topic/labday.${labDayId}.${kind}`, ears),
    fetchSnapshot: () => get(`/api/labdays/${labDayId}/${kind}`),
    clock: browserClock,
    random: Math.random,
  });
  addEventListener('online', () => link.hurry());
  document.addEventListener('visibilitychange', () => document.hidden || link.hurry());
  return link.start();
}
