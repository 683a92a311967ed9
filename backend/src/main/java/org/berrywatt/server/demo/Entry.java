package org.berrywatt.server.demo;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Something that was entered on the demo day.
 *
 * @param id the id that the phone made
 * @param at when it was entered
 * @param teamId the team whose phone it was, null for the teacher's computer
 * @param request one of the contract's requests
 */
record Entry(UUID id, Instant at, @Nullable UUID teamId, Object request) {}
