package org.berrywatt.server.typed;

import jakarta.persistence.Embeddable;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;

/**
 * A number as typed and as understood, the shape in which it is stored.
 *
 * @param text the typed characters, untouched
 * @param unit key of the unit it was understood in
 * @param valueSi value in the SI unit of its quantity
 * @param resolutionSi one step of the last typed digit, in the same unit, in [0, infinity)
 */
@Embeddable
public record TypedAmount(String text, String unit, double valueSi, double resolutionSi) {

    public static TypedAmount of(Amount amount) {
        return new TypedAmount(amount.text(), amount.unitKey(), amount.valueSi(), amount.resolutionSi());
    }

    /** The same as it travels. */
    public Typed typed() {
        return new Typed(text, unit);
    }
}
