package org.berrywatt.normalise;

import org.berrywatt.curve.SweepFigures;

/** The figures of a load sweep. */
public record LoadSweep(SweepFigures figures) implements UnderLight {}
