package org.berrywatt.light;

import java.util.List;
import org.berrywatt.uncertainty.Shape;

/**
 * How evenly a spot is lit, from readings over a grid: (max - min)/(max + min) (IEC 60904-9).
 *
 * @param nonUniformity in [0, 1)
 * @param grade the best class of the standard that it keeps to
 */
public record Uniformity(double nonUniformity, Grade grade) {
    /** Relative standard uncertainty of the place where nobody has read how even the light is (common practice, no source). */
    public static final double UNREAD_PLACE = 0.05;
    /** A light meter's head is as large as a cell, so that a grid does not see less than this (common practice, no source). */
    private static final double LEAST_PLACE = 0.01;

    /** Classes of IEC 60904-9:2020 by their limit of non-uniformity (from memory; the standard asks for 64 places). */
    public enum Grade {
        A_PLUS("A+", 0.01),
        A("A", 0.02),
        B("B", 0.05),
        C("C", 0.10),
        /** Beyond class C, as most lamps of a school are. */
        NONE("none", 1);

        private final String key;
        private final double limit;

        Grade(String key, double limit) {
            this.key = key;
            this.limit = limit;
        }

        public String key() {
            return key;
        }

        private static Grade of(double nonUniformity) {
            return List.of(values()).stream()
                    .filter(grade -> nonUniformity <= grade.limit)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * The uniformity of a spot.
     *
     * @param readings at least two, over the place where cells lie, in one unit, each in (0, ∞)
     * @throws IllegalArgumentException when there are fewer, or one is not in (0, ∞)
     */
    public static Uniformity of(List<Double> readings) {
        if (readings.size() < 2) {
            throw new IllegalArgumentException(
                    "uniformity needs readings at two places or more, not " + readings.size());
        }
        readings.forEach(Uniformity::requirePositive);
        var span = readings.stream().mapToDouble(Double::doubleValue).summaryStatistics();
        var nonUniformity = (span.getMax() - span.getMin()) / (span.getMax() + span.getMin());
        return new Uniformity(nonUniformity, Grade.of(nonUniformity));
    }

    /** Relative standard uncertainty of the light at an unknown place of the spot: rectangular, but at least 1 %. */
    public double relativeUncertainty() {
        return Math.max(LEAST_PLACE, Shape.RECTANGULAR.standardUncertainty(nonUniformity));
    }

    private static void requirePositive(double reading) {
        if (!(reading > 0 && reading < Double.MAX_VALUE / 2)) {
            throw new IllegalArgumentException("a light reading lies in (0, ∞), not " + reading);
        }
    }
}
