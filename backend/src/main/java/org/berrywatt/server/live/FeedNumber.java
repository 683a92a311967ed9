package org.berrywatt.server.live;

import java.util.UUID;

/**
 * Where a feed has arrived.
 *
 * @param epoch another one when the numbers began anew
 * @param seq 0 before the first state
 * @param print of the state with this number; empty before the first
 */
record FeedNumber(UUID epoch, long seq, String print) {

    FeedNumber next(String nextPrint) {
        return new FeedNumber(epoch, seq + 1, nextPrint);
    }
}
