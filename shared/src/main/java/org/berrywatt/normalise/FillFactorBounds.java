package org.berrywatt.normalise;

import org.berrywatt.curve.IdealFillFactor;
import org.berrywatt.curve.ThermalVoltage;

/** Between which fill factors a cell lies of which only current and voltage are known. */
final class FillFactorBounds {
    /** A straight line from short to open circuit. */
    static final double STRAIGHT_LINE = 0.25;

    private FillFactorBounds() {}

    /** Fill factor of an ideal diode of this voltage. */
    static double highest(double voltageV) {
        return IdealFillFactor.at(voltageV / ThermalVoltage.atCelsius(CellTemperature.REFERENCE_C));
    }

    static double middle(double voltageV) {
        return (highest(voltageV) + STRAIGHT_LINE) / 2;
    }

    static double halfWidth(double voltageV) {
        return (highest(voltageV) - STRAIGHT_LINE) / 2;
    }
}
