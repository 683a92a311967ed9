package org.berrywatt.light;

import org.berrywatt.uncertainty.Estimate;

/**
 * Light that falls askew on a flat cell: G = Gn cos θ.
 *
 * @param angleDeg θ between the light and the normal of the cell, in [0, 90)
 * @param standardUncertaintyDeg in [0, ∞)
 */
public record Incidence(double angleDeg, double standardUncertaintyDeg) {
    /** Beyond this the cell's glass reflects so much that the cosine is a poor guide (common practice, no source). */
    public static final double FLAGGED_FROM_DEG = 60;

    /**
     * Checks the angle.
     *
     * @throws IllegalArgumentException when it is not in [0, 90), or its uncertainty not in [0, ∞)
     */
    public Incidence {
        if (!(angleDeg >= 0 && angleDeg < 90)) {
            throw new IllegalArgumentException("light falls in at an angle in [0, 90)°, not " + angleDeg);
        }
        if (!(standardUncertaintyDeg >= 0 && standardUncertaintyDeg < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("an angle is uncertain by [0, ∞)°, not " + standardUncertaintyDeg);
        }
    }

    /** An angle set by eye and protractor, to 2° (common practice, no source). */
    public static Incidence byProtractor(double angleDeg) {
        return new Incidence(angleDeg, 2);
    }

    /** cos θ, uncertain by sin θ u(θ) and, squarely lit, by u(θ)²/2. */
    public Estimate cosine() {
        var angle = Math.toRadians(angleDeg);
        var u = Math.toRadians(standardUncertaintyDeg);
        return new Estimate(Math.cos(angle), Math.hypot(Math.sin(angle) * u, Math.cos(angle) * u * u / 2));
    }

    /**
     * The light on the cell.
     *
     * @param normal reading of an instrument that faces the light, in lx or W/m²
     * @return in the unit of the reading
     */
    public Estimate on(Estimate normal) {
        var cosine = cosine();
        return new Estimate(
                normal.value() * cosine.value(),
                Math.hypot(
                        cosine.value() * normal.standardUncertainty(), normal.value() * cosine.standardUncertainty()));
    }

    /** Whether the angle is beyond 60°. */
    public boolean flagged() {
        return angleDeg > FLAGGED_FROM_DEG;
    }
}
