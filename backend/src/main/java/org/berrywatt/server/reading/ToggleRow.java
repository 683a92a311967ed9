package org.berrywatt.server.reading;

import jakarta.persistence.Embeddable;
import jakarta.persistence.Embedded;
import org.berrywatt.contract.ToggleAnswer;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/**
 * One state of the shutter.
 *
 * @param lit whether the cell was open to the light
 * @param quantity key of what was read, voltage or current
 * @param amount in V or A
 */
@Embeddable
record ToggleRow(boolean lit, String quantity, @Embedded TypedAmount amount) {

    RecordedPoint view() {
        var shown = new Measured(amount.valueSi(), amount.resolutionSi());
        return isVoltage() ? new RecordedPoint(null, shown, null) : new RecordedPoint(null, null, shown);
    }

    ToggleAnswer answer() {
        return new ToggleAnswer(lit, amount.typed(), valueSi(isVoltage()), valueSi(!isVoltage()));
    }

    private @Nullable Double valueSi(boolean wanted) {
        return wanted ? amount.valueSi() : null;
    }

    private boolean isVoltage() {
        return quantity.equals(Quantity.VOLTAGE.key());
    }
}
