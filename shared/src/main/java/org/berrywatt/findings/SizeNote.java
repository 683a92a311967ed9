package org.berrywatt.findings;

import java.util.Map;
import java.util.Optional;

/** Says how many times the power of the worst level the best level has, by medians of working cells. */
final class SizeNote {

    private SizeNote() {}

    static Optional<Sentence> of(Levels levels) {
        Level best = levels.best().orElseThrow();
        Level worst = levels.worst().orElseThrow();
        double ratio = best.medianWm2().orElseThrow() / worst.medianWm2().orElseThrow();
        return ratio > 1 && Double.isFinite(ratio) ? Optional.of(of(ratio, best, worst)) : Optional.empty();
    }

    private static Sentence of(double ratio, Level best, Level worst) {
        return Sentence.of(
                "size", Map.of("ratio", twoDigits(ratio), "bestLevel", best.key(), "worstLevel", worst.key()));
    }

    private static double twoDigits(double ratio) {
        return ratio < 10 ? Math.rint(ratio * 10) / 10 : Math.rint(ratio);
    }
}
