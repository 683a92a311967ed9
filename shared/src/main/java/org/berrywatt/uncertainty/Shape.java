package org.berrywatt.uncertainty;

/** Shapes of distribution that an input may have (JCGM 100:2008, 4.3; JCGM 101:2008, table 1). */
public enum Shape {
    /** Bell curve; its half-width is one standard uncertainty. */
    NORMAL("normal", 1),
    /** All values between two limits are alike, such as a last digit or an accuracy statement: a / √3. */
    RECTANGULAR("rectangular", Math.sqrt(3)),
    /** Values near the middle are likelier, such as the difference of two rounded numbers: a / √6. */
    TRIANGULAR("triangular", Math.sqrt(6)),
    /** Values near the limits are likelier, such as a temperature that swings: a / √2. */
    ARCSINE("arcsine", Math.sqrt(2)),
    /**
     * Student's t, such as the mean of few readings. Its standard uncertainty is s / √n, the scale of the curve (JCGM 100,
     * 4.2.3); the curve itself is wider, by √(ν / (ν - 2)) for ν in (2, ∞) degrees of freedom (JCGM 101, 6.4.9).
     */
    STUDENT("student", 1);

    private final String key;
    private final double divisor;

    Shape(String key, double divisor) {
        this.key = key;
        this.divisor = divisor;
    }

    public String key() {
        return key;
    }

    /** Standard uncertainty of a distribution of this shape with the given half-width. */
    public double standardUncertainty(double halfWidth) {
        return halfWidth / divisor;
    }
}
