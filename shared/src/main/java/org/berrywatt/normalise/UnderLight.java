package org.berrywatt.normalise;

/** What was measured at the cell's clips under a light. */
public sealed interface UnderLight permits SpotReading, LoadSweep {}
