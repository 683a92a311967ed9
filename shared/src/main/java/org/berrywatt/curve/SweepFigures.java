package org.berrywatt.curve;

import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a measured I-V curve.
 *
 * @param shortCircuitCurrentA current at 0 V
 * @param openCircuitVoltageV voltage at 0 A
 * @param maximumPowerW greatest power
 * @param fillFactor maximum power over the product of the two, in (0, 1)
 * @param shuntConductanceS fall of current with voltage at short circuit, an upper bound of 1/Rsh, in [0, ∞)
 * @param peakBracketed whether points lie on both sides of the greatest power; without, the true peak may be higher
 * @param hysteresis sweep there against sweep back, in the order in which the points were taken; null when they went one way
 */
public record SweepFigures(
        Estimate shortCircuitCurrentA,
        Estimate openCircuitVoltageV,
        Estimate maximumPowerW,
        Estimate fillFactor,
        double shuntConductanceS,
        boolean peakBracketed,
        @Nullable Hysteresis hysteresis) {}
