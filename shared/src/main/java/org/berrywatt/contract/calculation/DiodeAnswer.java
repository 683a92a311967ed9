package org.berrywatt.contract.calculation;

import java.util.List;

/**
 * The curve of a single diode.
 *
 * @param currentsA one for each voltage, in their order; the most negative finite number where the current is beyond it
 */
public record DiodeAnswer(
        List<Double> currentsA,
        double shortCircuitCurrentA,
        double openCircuitVoltageV,
        double maximumPowerW,
        double voltageAtMaximumPowerV,
        double currentAtMaximumPowerA) {}
