package org.berrywatt.calibration;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/** Errors of one day by their cause: whoever meets a cause meets the same error. */
final class SharedErrors {
    private final SplittableRandom random;
    private final Map<String, Double> deviates = new HashMap<>();

    SharedErrors(SplittableRandom random) {
        this.random = random;
    }

    /** A factor exp(z u) of a relative standard uncertainty. */
    double factor(String cause, double relativeUncertainty) {
        return Math.exp(relativeUncertainty * deviates.computeIfAbsent(cause, name -> random.nextGaussian()));
    }

    /** Where within its promised error something lies, in [-1, 1). */
    double within(String cause) {
        return deviates.computeIfAbsent(cause, name -> random.nextDouble(-1, 1));
    }
}
