package org.berrywatt.plan;

import java.util.Collection;
import java.util.List;

/**
 * How much cells differ that one team made alike on one day.
 *
 * @param spread geometric standard deviation, in (1, infinity)
 * @param degreesOfFreedom cells less groups, 1 or more
 */
public record AlikeCells(double spread, int degreesOfFreedom) {

    /** Fewer say less than the usual assumption: below 8, the upper bound at 95 % is more than 1.9 times what is seen. */
    private static final int ENOUGH = 8;

    /** Whether it may stand in for {@link Wish#USUAL_SPREAD}. */
    public boolean enough() {
        return degreesOfFreedom >= ENOUGH && spread > 1;
    }

    /**
     * The pooled standard deviation of the logarithms within groups.
     *
     * @param groups results of cells made alike, each in (0, infinity); groups of one tell nothing
     */
    public static AlikeCells of(Collection<List<Double>> groups) {
        double squares = 0;
        int degrees = 0;
        for (var group : groups) {
            double mean = group.stream().mapToDouble(Math::log).average().orElse(0);
            squares += group.stream()
                    .mapToDouble(value -> Math.log(value) - mean)
                    .map(rest -> rest * rest)
                    .sum();
            degrees += Math.max(0, group.size() - 1);
        }
        return new AlikeCells(degrees == 0 ? 1 : Math.exp(Math.sqrt(squares / degrees)), degrees);
    }
}
