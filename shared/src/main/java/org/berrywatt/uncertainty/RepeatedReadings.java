package org.berrywatt.uncertainty;

/**
 * Readings of one quantity under the same conditions: the evaluation of type A (JCGM 100:2008, 4.2).
 *
 * <p>Two or three readings say little about their own spread, so their interval is Student's and wide (G.3). What the meter
 * adds, its accuracy and its last digit, comes on top as inputs of its own.
 *
 * @param count in [2, ∞)
 * @param mean finite
 * @param standardDeviation experimental standard deviation of one reading (n - 1), in [0, ∞)
 */
public record RepeatedReadings(int count, double mean, double standardDeviation) {

    /**
     * Readings in any order.
     *
     * @throws IllegalArgumentException when there are fewer than two, or one is not finite
     */
    public static RepeatedReadings of(double... readings) {
        if (readings.length < 2) {
            throw new IllegalArgumentException(
                    "repeated readings must be [2, infinity) in number, not " + readings.length + "; read once more");
        }
        for (double reading : readings) {
            if (!Double.isFinite(reading)) {
                throw new IllegalArgumentException("a reading must be finite, not " + reading);
            }
        }
        var moments = Moments.of(readings);
        return new RepeatedReadings(readings.length, moments.mean(), moments.standardDeviation());
    }

    /** Standard uncertainty of the mean, s / √n (JCGM 100:2008, 4.2.3). */
    public double standardUncertainty() {
        return standardDeviation / Math.sqrt(count);
    }

    /** ν = n - 1. */
    public int degreesOfFreedom() {
        return count - 1;
    }

    /**
     * Half-width of the interval around the mean by Student's t (JCGM 100:2008, G.3.2).
     *
     * @param probability in (0, 1)
     */
    public double expandedUncertainty(double probability) {
        return standardUncertainty() * Student.factor(probability, degreesOfFreedom());
    }

    /**
     * Standard deviation of the scaled and shifted t distribution that stands for the mean, √(ν / (ν - 2)) s / √n (JCGM
     * 101:2008, 6.4.9.4); NaN below four readings, where it does not exist.
     */
    public double standardDeviationOfStudent() {
        double degrees = degreesOfFreedom();
        return degrees > 2 ? Math.sqrt(degrees / (degrees - 2)) * standardUncertainty() : Double.NaN;
    }

    /** The mean as an input: Student's t with ν degrees of freedom, scaled by s / √n. */
    public Input input(String name, String unit) {
        return Input.student(name, mean, unit, standardUncertainty(), degreesOfFreedom());
    }
}
