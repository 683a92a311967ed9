package org.berrywatt.normalise;

/** A measurement that has no result at reference conditions; the message names what, the value and the limit. */
public final class NormalisationRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String quantity;
    private final double value;
    private final String limit;

    NormalisationRefused(String quantity, double value, String limit) {
        super(quantity + " must lie in " + limit + ", not " + value);
        this.quantity = quantity;
        this.value = value;
        this.limit = limit;
    }

    /** What was out of range: {@code area}, {@code effectiveIrradiance}, {@code photocurrent} ... */
    public String quantity() {
        return quantity;
    }

    public double value() {
        return value;
    }

    /** The allowed range in interval notation, in SI units. */
    public String limit() {
        return limit;
    }
}
