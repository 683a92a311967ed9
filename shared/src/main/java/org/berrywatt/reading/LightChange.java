package org.berrywatt.reading;

import java.util.Optional;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * A quantity read in the dark and under light.
 *
 * @param dark what the cell itself gives in the dark
 * @param shown what the meter showed in the dark; its zero is in it as it is in the reading under light, and cancels
 * @param light what the meter showed under light
 */
record LightChange(Estimate dark, Estimate shown, Estimate light) {

    static Optional<LightChange> of(@Nullable Estimate dark, @Nullable Estimate shown, @Nullable Estimate light) {
        return dark == null || shown == null || light == null
                ? Optional.empty()
                : Optional.of(new LightChange(dark, shown, light));
    }

    /** What light adds, in its own standard uncertainties; 0 where nothing changes. */
    double multiple() {
        Estimate change = light.minus(shown);
        return change.value() == 0 ? 0 : change.value() / change.standardUncertainty();
    }

    /** The dark part among dark part and light's own part, in [0, 1]; 0 where the dark reading is lost in its uncertainty. */
    double darkShare(double factor) {
        double own = Math.abs(light.value() - shown.value());
        return darkIsReal(factor) ? Math.abs(dark.value()) / (Math.abs(dark.value()) + own) : 0;
    }

    boolean darkIsReal(double factor) {
        return Math.abs(dark.value()) > factor * dark.standardUncertainty();
    }

    double largest() {
        return Math.max(Math.abs(dark.value()), Math.abs(light.value()));
    }

    LightChange mirrored() {
        return new LightChange(dark.times(-1), shown.times(-1), light.times(-1));
    }
}
