package org.berrywatt.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.berrywatt.light.Ultraviolet;
import org.jspecify.annotations.Nullable;

/**
 * The class of a cell by its whole history: dark check, every reading under light, and light toggles where they were done.
 *
 * <p>The latest reading under light decides as in {@link DarkCheck}. Two things can overrule it: a response that did not come
 * back with each opening of the shutter is none; and a cell that answers to light with ultraviolet in it, but not to light
 * without, answers with its bare oxide.
 */
public final class SolarCheck {

    private SolarCheck() {}

    /**
     * A reading under light.
     *
     * @param ultraviolet how much ultraviolet that light holds; a trace tells nothing about the oxide
     */
    public record Lit(Terminals terminals, Ultraviolet ultraviolet) {}

    /**
     * Classifies a cell.
     *
     * @param dark covered cell
     * @param history under light, oldest first, at least one
     * @param toggles null when the shutter was not used
     * @throws IllegalArgumentException when there is no reading under light, or neither voltage nor current was read both in
     *     the dark and under the latest light
     */
    public static Classification classify(
            Covered dark, List<Lit> history, @Nullable LightToggles toggles, DarkThresholds limits) {
        if (history.isEmpty()) {
            throw new IllegalArgumentException("a cell's class needs a reading under light");
        }
        var latest = DarkCheck.classify(dark, last(history).terminals(), limits);
        if (toggles != null && !toggles.held() && latest.solarClass().counts()) {
            return new Classification(SolarClass.NO_RESPONSE, failedFirst(toggles));
        }
        return oxideOnly(dark, history, latest, limits).orElse(latest);
    }

    private static Optional<Classification> oxideOnly(
            Covered dark, List<Lit> history, Classification latest, DarkThresholds limits) {
        if (!(latest.solarClass().counts() || latest.solarClass() == SolarClass.NO_RESPONSE)) {
            return Optional.empty();
        }
        var withUltraviolet = latest(dark, history, Ultraviolet.RICH, limits);
        var without = latest(dark, history, Ultraviolet.NONE, limits);
        return withUltraviolet
                .filter(it -> it.solarClass().counts())
                .flatMap(answer -> without.filter(it -> it.solarClass() == SolarClass.NO_RESPONSE)
                        .map(silence -> new Classification(SolarClass.OXIDE_ONLY, both(silence, answer))));
    }

    private static Optional<Classification> latest(
            Covered dark, List<Lit> history, Ultraviolet ultraviolet, DarkThresholds limits) {
        return history.stream()
                .filter(lit -> lit.ultraviolet() == ultraviolet)
                .filter(lit -> comparable(dark.shown(), lit.terminals()))
                .reduce((earlier, later) -> later)
                .map(lit -> DarkCheck.classify(dark, lit.terminals(), limits));
    }

    private static boolean comparable(Terminals dark, Terminals light) {
        return (dark.voltageV() != null && light.voltageV() != null)
                || (dark.currentA() != null && light.currentA() != null);
    }

    private static List<Decider> both(Classification silence, Classification answer) {
        var deciders = new ArrayList<>(silence.deciders());
        deciders.addAll(answer.deciders());
        return List.copyOf(deciders);
    }

    /** The number that failed comes first. */
    private static List<Decider> failedFirst(LightToggles toggles) {
        var weak = toggles.deciders().get(1);
        var scatter = toggles.deciders().get(2);
        return toggles.repeatable() ? List.of(weak, scatter) : List.of(scatter, weak);
    }

    private static Lit last(List<Lit> history) {
        return history.get(history.size() - 1);
    }
}
