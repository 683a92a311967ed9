package org.berrywatt.reading;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/**
 * What is left of a cell's settled figure later on: after an hour, the next lesson, ... (ideas of the ISOS protocols; Reese et al.
 * 2011, Khenkin et al. 2020).
 *
 * @param parts later figures over the settled one, in order of age
 * @param lifetime when it fell below 80 %, as far as it was seen
 */
public record Retention(List<Aged> parts, Lifetime lifetime) {
    private static final double LIMIT = 0.8;

    /**
     * A figure of a cell of some age.
     *
     * @param age since it had settled, in (0, ∞)
     * @param value in the unit of the settled figure, or as a part of it
     */
    public record Aged(Duration age, Estimate value) {
        /**
         * Checks the age.
         *
         * @throws IllegalArgumentException when it is not above 0
         */
        public Aged {
            if (age.isNegative() || age.isZero()) {
                throw new IllegalArgumentException("a later reading has an age in (0, ∞), not " + age);
            }
        }
    }

    /** T80, the time to 80 % of the settled figure: censored, since nobody looks all the time; never guessed. */
    public sealed interface Lifetime {
        /** Still above 80 % at the last look. */
        record LongerThan(Duration lastLook) implements Lifetime {}

        /** Above 80 % at one look, below at the next; the first may be the settled figure itself, at age 0. */
        record Between(Duration lastAbove, Duration firstBelow) implements Lifetime {}
    }

    /**
     * The retention of a cell.
     *
     * @param settled value in (0, ∞)
     * @param later at least one, in any order
     * @throws IllegalArgumentException when the settled figure is not in (0, ∞), or nothing was read later
     */
    public static Retention of(Estimate settled, List<Aged> later) {
        if (!(settled.value() > 0)) {
            throw new IllegalArgumentException("retention needs a settled figure in (0, ∞), not " + settled.value());
        }
        if (later.isEmpty()) {
            throw new IllegalArgumentException("retention needs a later reading");
        }
        var parts = later.stream()
                .sorted(Comparator.comparing(Aged::age))
                .map(aged -> new Aged(aged.age(), ratio(aged.value(), settled)))
                .toList();
        return new Retention(parts, lifetime(parts));
    }

    private static Lifetime lifetime(List<Aged> parts) {
        var lastAbove = Duration.ZERO;
        for (var part : parts) {
            if (!(part.value().value() >= LIMIT)) {
                return new Lifetime.Between(lastAbove, part.age());
            }
            lastAbove = part.age();
        }
        return new Lifetime.LongerThan(lastAbove);
    }

    private static Estimate ratio(Estimate later, Estimate settled) {
        var ratio = later.value() / settled.value();
        return new Estimate(
                ratio,
                Math.hypot(later.standardUncertainty() / settled.value(), ratio * settled.relativeUncertainty()));
    }
}
