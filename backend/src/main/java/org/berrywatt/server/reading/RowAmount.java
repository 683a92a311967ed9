package org.berrywatt.server.reading;

import jakarta.persistence.Embeddable;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.jspecify.annotations.Nullable;

/** An amount of a sweep's row: as typed and understood, or without text when it follows from the other two. */
@Embeddable
record RowAmount(@Nullable String text, @Nullable String unit, double valueSi, double resolutionSi) {

    static RowAmount typed(Amount amount) {
        return new RowAmount(amount.text(), amount.unitKey(), amount.valueSi(), amount.resolutionSi());
    }

    static RowAmount derived(double valueSi, double resolutionSi) {
        return new RowAmount(null, null, valueSi, resolutionSi);
    }

    /** As it travels; null when it was not typed. */
    @Nullable
    Typed typed() {
        return text == null ? null : new Typed(text, unit);
    }

    /** What the meter showed; null when it showed nothing and this follows from the other two. */
    @Nullable
    Measured shown() {
        return text == null ? null : new Measured(valueSi, resolutionSi);
    }
}
