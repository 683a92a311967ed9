package org.berrywatt.quantity;

/**
 * An area as typed, with what a ruler leaves open.
 *
 * @param amount the area in m²
 * @param standardUncertaintyM2 standard uncertainty in m², in [0, ∞)
 */
public record Area(Amount amount, double standardUncertaintyM2) {

    /** The area in m². */
    public double areaM2() {
        return amount.valueSi();
    }
}
