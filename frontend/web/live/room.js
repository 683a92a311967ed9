import { serverClock } from '../core/clock.js';
import { follow } from './follow.js';

/**
 * Follows what everybody in the room may know: `body` is {serverTime, revision, entryOpen, announcement, timers}. Sets the
 * page's clock by it.
 */
export function followRoom(labDayId) {
  const link = follow(labDayId, 'room');
  let heard = null;
  link.addEventListener('change', () => {
    if (link.body === heard) return;
    heard = link.body;
    serverClock.heard(heard.serverTime);
  });
  return link;
}

/**
 * Calls `reload` whenever somebody changed the day. While one runs the next waits, and one alone, so that a busy class
 * costs a slow phone no queue.
 */
export function whenRevised(room, reload) {
  let seen = null;
  let running = false;
  async function look() {
    const revision = room.body?.revision ?? seen;
    if (running || revision === seen) return;
    seen = revision;
    running = true;
    try {
      await reload();
    } finally {
      running = false;
      look();
    }
  }
  room.addEventListener('change', look);
}

/** The announcement that stands at a time in ms, or null. */
export function standingAnnouncement(room, now) {
  const announcement = room?.announcement;
  if (!announcement) return null;
  return announcement.until && Date.parse(announcement.until) <= now ? null : announcement;
}
