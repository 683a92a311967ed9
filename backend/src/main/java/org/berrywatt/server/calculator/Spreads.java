package org.berrywatt.server.calculator;

import org.berrywatt.contract.calculation.Spread;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** How sure an estimate is, as it travels. */
final class Spreads {

    private Spreads() {}

    static Spread of(Estimate estimate) {
        return new Spread(estimate.standardUncertainty(), estimate.low(), estimate.high());
    }

    static @Nullable Spread ofNullable(@Nullable Estimate estimate) {
        return estimate == null ? null : of(estimate);
    }
}
