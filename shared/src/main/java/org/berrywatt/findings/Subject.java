package org.berrywatt.findings;

import org.jspecify.annotations.Nullable;

/**
 * A cell as findings see it.
 *
 * @param label how people call it
 * @param team whoever built it; cells of one team resemble each other, and of all teams one may be called ""
 * @param day the lab day; teams of one name on two days are two teams
 * @param performance of a cell that counts, in [0, ∞), for example power per area in W/m²; null for others
 */
public record Subject(
        String label,
        String team,
        String day,
        Standing standing,
        @Nullable Double performance) {

    /**
     * Checks that a counting cell brings its performance.
     *
     * @throws IllegalArgumentException when a cell counts without a finite performance of 0 or more
     */
    public Subject {
        if (standing == Standing.COUNTS
                && !(performance != null && performance >= 0 && performance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a cell that counts needs a performance in [0, infinity), got " + performance);
        }
    }
}
