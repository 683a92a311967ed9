package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * How even the light of a station is: readings over the places where cells may lie, in lx or in W/m2.
 *
 * @param readings row by row, 2 to 25 of one kind
 * @param columns places in a row, in [1, 25]
 */
public record GridRequest(UUID stationId, List<Typed> readings, int columns, Instant noticedAt) {}
