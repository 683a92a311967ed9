package org.berrywatt.reading;

import java.time.Instant;
import org.berrywatt.uncertainty.Estimate;

/** A cell's figure and when it was read; voltage in V or current in A. */
public record TimedValue(Instant at, Estimate value) {}
