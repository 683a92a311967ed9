package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/** One row of a load sweep: any two of load, voltage and current. */
public record SweepPoint(
        @Nullable Typed load,
        @Nullable Typed voltage,
        @Nullable Typed current) {}
