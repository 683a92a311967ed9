package org.berrywatt.light;

import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * A lamp small beside its distance: its light thins out with the square of the distance, E2 = E1 (d1/d2)².
 *
 * <p>Nearer than five diameters that is no longer true (five-times rule of photometry; IES). A disc of radius r that shines
 * the same in all directions gives E = πL r²/(r² + d²) on its axis, so that the law is off by (r/d)², 1 % at five
 * diameters; that is carried as the half-width of a rectangular distribution. It does not hold for reflectors, lenses and
 * panels at all.
 *
 * @param diameterM of the part that shines, in (0, ∞)
 */
public record SmallLamp(double diameterM) {
    /** Distance over diameter from which on the law holds. */
    public static final double DIAMETERS = 5;

    /**
     * Checks the diameter.
     *
     * @throws IllegalArgumentException when it is not in (0, ∞)
     */
    public SmallLamp {
        if (!(diameterM > 0 && diameterM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a lamp has a diameter in (0, ∞) m, not " + diameterM);
        }
    }

    /** The nearest distance at which the law holds, in m. */
    public double nearestM() {
        return DIAMETERS * diameterM;
    }

    /**
     * The reading that belongs to another distance from the lamp.
     *
     * @param reading in lx or W/m²
     * @param readAtM distance of the reading, value in [5 diameters, ∞)
     * @param wantedM the other distance, value in [5 diameters, ∞)
     * @return in the unit of the reading
     * @throws IllegalArgumentException when a distance is shorter than five diameters or not finite
     */
    public Estimate at(Estimate reading, Estimate readAtM, Estimate wantedM) {
        requireFar(readAtM.value());
        requireFar(wantedM.value());
        var value = reading.value() * square(readAtM.value() / wantedM.value());
        var distances = 2 * Math.hypot(readAtM.relativeUncertainty(), wantedM.relativeUncertainty());
        var relative = Math.hypot(distances, lawUncertainty(readAtM.value(), wantedM.value()));
        return new Estimate(
                value,
                Math.hypot(
                        value * relative, reading.standardUncertainty() * square(readAtM.value() / wantedM.value())));
    }

    private double lawUncertainty(double oneM, double otherM) {
        var radius = diameterM / 2;
        return Shape.RECTANGULAR.standardUncertainty(Math.abs(square(radius / oneM) - square(radius / otherM)));
    }

    private void requireFar(double distanceM) {
        if (!(distanceM >= nearestM() && distanceM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the inverse-square law holds from five diameters on, in [" + nearestM()
                    + ", ∞) m, not at " + distanceM + " m; read the light where the cell lies instead");
        }
    }

    private static double square(double x) {
        return x * x;
    }
}
