package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A measurement model and what is known of its inputs.
 *
 * @param model key of a model, for example {@code "product"}
 * @param inputs in the order of the model's formula, up to 12, independent of each other
 * @param trials of the Monte Carlo evaluation, in [1000, 200000]; 100000 when left out
 * @param seed of the trials; 1 when left out
 */
public record UncertaintyRequest(
        @Nullable String model,
        @Nullable List<@Nullable Quantity> inputs,
        @Nullable Integer trials,
        @Nullable Long seed) {

    /**
     * An input of the model.
     *
     * @param name its own among the inputs, 1 to 60 characters
     * @param value estimate, in [-1e30, 1e30]
     * @param u standard uncertainty in the unit of the value, in [0, 1e30]; of a half-width a it is a/√3 (rectangular), a/√6
     *     (triangular), a/√2 (arcsine)
     * @param shape {@code "normal"}, {@code "rectangular"}, {@code "triangular"}, {@code "arcsine"} or {@code "student"};
     *     normal when left out
     * @param dof degrees of freedom of the standard uncertainty, in [1, 1e6]; needed for {@code "student"}, taken as known
     *     when left out
     */
    public record Quantity(
            @Nullable String name,
            @Nullable Double value,
            @Nullable Double u,
            @Nullable String shape,
            @Nullable Double dof) {}
}
