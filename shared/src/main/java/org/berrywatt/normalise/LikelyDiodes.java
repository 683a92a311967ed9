package org.berrywatt.normalise;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.curve.DiodeFit;
import org.berrywatt.curve.DiodeParameter;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Shape;

/**
 * The diode that fits a sweep best, and others that the sweep does not exclude, drawn as likely as they are.
 *
 * @param drawn not empty
 */
record LikelyDiodes(LitDiode best, List<LitDiode> drawn) {

    private static final int DRAWN = 48;
    /** One set of deviates for every cell: the spread of a cell does not hang on who else was measured. */
    private static final Deviates DEVIATES = new Deviates(891, DRAWN);

    /** Empty where there are no points to fit a diode to. */
    static Optional<LikelyDiodes> of(UnderLight underLight) {
        return underLight instanceof LoadSweep sweep && !sweep.points().isEmpty()
                ? Optional.of(of(DiodeFit.of(sweep.points(), CellTemperature.REFERENCE_C)))
                : Optional.empty();
    }

    private static LikelyDiodes of(DiodeFit fit) {
        var deviates = Stream.of(DiodeParameter.values())
                .map(parameter -> DEVIATES.of("diode/" + parameter, Shape.NORMAL, Double.POSITIVE_INFINITY))
                .toList();
        var drawn = IntStream.range(0, DRAWN)
                .mapToObj(i -> fit.drawn(
                        deviates.stream().mapToDouble(stream -> stream[i]).toArray()))
                .map(LitDiode::of)
                .toList();
        return new LikelyDiodes(LitDiode.of(fit.diode()), drawn);
    }

    /** What the best one says. */
    double best(ToDoubleFunction<LitDiode> answer) {
        return answer.applyAsDouble(best);
    }

    /** Root mean square of how far the drawn ones answer from the best. */
    double spread(ToDoubleFunction<LitDiode> answer) {
        var middle = best(answer);
        return Math.sqrt(drawn.stream()
                .mapToDouble(answer)
                .map(value -> (value - middle) * (value - middle))
                .average()
                .orElse(0));
    }
}
