package org.berrywatt.server.findings;

import org.jspecify.annotations.Nullable;

/**
 * A build parameter of a table.
 *
 * @param number whether its levels are numbers
 * @param unit key of the unit of the numbers, where they have one
 */
record Column(String key, boolean number, @Nullable String unit) {}
