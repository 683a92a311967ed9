package org.berrywatt.findings;

import org.jspecify.annotations.Nullable;

/**
 * A cell as one build parameter sees it.
 *
 * @param team whoever built it; cells of one team resemble each other
 * @param level key of the level, or the number as text; null when the parameter was not recorded
 * @param number the value of a numeric parameter in its base unit, finite; null for sorts
 * @param powerDensityWm2 maximum power per area at reference conditions, finite; there exactly when the cell counts
 */
public record Observation(
        String team,
        @Nullable String level,
        @Nullable Double number,
        Standing standing,
        @Nullable Double powerDensityWm2) {

    /**
     * Checks that a counting cell brings its power.
     *
     * @throws IllegalArgumentException when a cell counts without a finite power, or a number is not finite
     */
    public Observation {
        if (number != null && !Double.isFinite(number)) {
            throw new IllegalArgumentException("number must be finite, got " + number);
        }
        if (standing == Standing.COUNTS && !(powerDensityWm2 != null && Double.isFinite(powerDensityWm2))) {
            throw new IllegalArgumentException(
                    "a cell that counts needs a finite power density, got " + powerDensityWm2);
        }
    }

    boolean recorded() {
        return level != null;
    }
}
