package org.berrywatt.normalise;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.berrywatt.curve.Diode;

/**
 * The diode that fits a sweep best, and others that the sweep does not exclude, drawn as likely as they are.
 *
 * @param drawn not empty
 */
record LikelyDiodes(Diode best, List<Diode> drawn) {

    static Optional<LikelyDiodes> of(UnderLight underLight) {
        return Optional.empty();
    }

    /** What the best one says. */
    double best(ToDoubleFunction<Diode> answer) {
        return answer.applyAsDouble(best);
    }

    /** Root mean square of how far the drawn ones answer from the best. */
    double spread(ToDoubleFunction<Diode> answer) {
        var middle = best(answer);
        return Math.sqrt(drawn.stream()
                .mapToDouble(answer)
                .map(value -> (value - middle) * (value - middle))
                .average()
                .orElse(0));
    }
}
