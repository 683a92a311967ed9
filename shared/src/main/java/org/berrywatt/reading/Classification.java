package org.berrywatt.reading;

import java.util.List;

/** The class of a cell with the numbers that decided, the weightiest first. */
public record Classification(SolarClass solarClass, List<Decider> deciders) {}
