package org.berrywatt.contract;

import java.util.UUID;

/**
 * Joins a team to another one of the day, which keeps its name and mark and gets the cells, phones, timers and code of both.
 *
 * @param into the team that remains
 */
public record TeamMergerRequest(UUID into) {}
