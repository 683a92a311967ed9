package org.berrywatt.quantity;

import java.math.BigDecimal;
import java.util.List;

/**
 * A unit that may be typed or chosen: value in SI = typed value × {@code toSi} + {@code offsetSi}.
 *
 * @param key name on the wire, ASCII, for example {@code "uA"}
 * @param quantity what the unit measures
 * @param symbols every spelling that is understood, the one to show first
 * @param toSi SI units per unit, in (0, ∞)
 * @param offsetSi SI value of the unit's zero; 0 but for degrees Celsius
 */
public record MeasuringUnit(String key, Quantity quantity, List<String> symbols, double toSi, double offsetSi) {

    /** The spelling to show, for example {@code "µA"}. */
    public String symbol() {
        return symbols.get(0);
    }

    /** A value in this unit, in SI. */
    public double si(double value) {
        return si(BigDecimal.valueOf(value));
    }

    /** An SI value in this unit. */
    public double fromSi(double valueSi) {
        return (valueSi - offsetSi) / toSi;
    }

    /** Decimal arithmetic, rounded once: 60 mV and 0.06 V become the same double. */
    double si(BigDecimal value) {
        return value.multiply(BigDecimal.valueOf(toSi))
                .add(BigDecimal.valueOf(offsetSi))
                .doubleValue();
    }

    double stepSi(BigDecimal step) {
        return step.multiply(BigDecimal.valueOf(toSi)).doubleValue();
    }
}
