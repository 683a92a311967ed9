package org.berrywatt.server.team;

import java.util.UUID;

/**
 * A request for a new team, understood.
 *
 * @param byPhone whether a phone with the day's code asks, and not a teacher
 * @param claimed whether the phone proves with a random text of its own that a repeated request is its own
 * @param writtenBy who asks
 */
record TeamApplication(UUID labDayId, String name, boolean byPhone, boolean claimed, String writtenBy) {}
