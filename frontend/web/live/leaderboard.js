import { follow } from './follow.js';

/** Follows the leaderboard of a lab day; `body` is its newest state. */
export const followLeaderboard = labDayId => follow(labDayId, 'leaderboard');
