package org.berrywatt.server.calculator;

import java.util.List;
import java.util.Objects;
import org.berrywatt.contract.calculation.UncertaintyAnswer;
import org.berrywatt.contract.calculation.UncertaintyRequest;
import org.berrywatt.contract.calculation.UncertaintyRequest.Quantity;
import org.berrywatt.server.typed.Given;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Contribution;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.FirstOrder;
import org.berrywatt.uncertainty.Formula;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.MonteCarlo;
import org.berrywatt.uncertainty.Sample;
import org.berrywatt.uncertainty.Shape;
import org.jspecify.annotations.Nullable;

/** The uncertainty of a model's result by both evaluations. */
final class UncertaintyCalculation {

    private static final int FEWEST_TRIALS = 1000;
    private static final int MOST_TRIALS = 200_000;
    private static final int USUAL_TRIALS = 100_000;
    private static final double PROBABILITY = 0.95;

    private UncertaintyCalculation() {}

    static UncertaintyAnswer of(UncertaintyRequest request) {
        var model = Keys.FORMULAS.need("model", request.model());
        var inputs = Entries.read(
                "inputs", request.inputs(), model.fewestInputs(), model.mostInputs(), UncertaintyCalculation::input);
        Named.requireDistinct("inputs", inputs.stream().map(Input::name).toList());
        return new UncertaintyAnswer(
                model.key(),
                model.symbols(),
                firstOrder(FirstOrder.evaluate(inputs, model)),
                monteCarlo(MonteCarlo.evaluate(inputs, model, deviates(request), model.key())));
    }

    /** Numbers that the request has drawn, at the most. */
    static long draws(UncertaintyRequest request) {
        var inputs = request.inputs();
        return inputs == null ? 0 : (long) Math.min(inputs.size(), Formula.SUM.mostInputs()) * trials(request);
    }

    private static int trials(UncertaintyRequest request) {
        var trials = request.trials();
        return trials == null ? USUAL_TRIALS : Given.between("trials", trials, FEWEST_TRIALS, MOST_TRIALS);
    }

    private static Deviates deviates(UncertaintyRequest request) {
        return new Deviates(Objects.requireNonNullElse(request.seed(), 1L), trials(request));
    }

    private static Input input(String path, Quantity given) {
        var shape = Keys.SHAPES.or(Shape.NORMAL, path + ".shape", given.shape());
        return new Input(
                Named.line(path + ".name", given.name()),
                Ranges.ESTIMATE.need(path + ".value", given.value()),
                "",
                Ranges.STANDARD_UNCERTAINTY.need(path + ".u", given.u()),
                shape,
                degreesOfFreedom(path + ".dof", shape, given.dof()),
                null);
    }

    private static double degreesOfFreedom(String path, Shape shape, @Nullable Double given) {
        return shape == Shape.STUDENT
                ? Ranges.DEGREES_OF_FREEDOM.need(path, given)
                : Ranges.DEGREES_OF_FREEDOM.or(Double.POSITIVE_INFINITY, path, given);
    }

    private static UncertaintyAnswer.FirstOrder firstOrder(Budget budget) {
        Estimate estimate = budget.estimate();
        var degrees = budget.effectiveDegreesOfFreedom();
        var half = budget.expandedUncertainty(PROBABILITY);
        return new UncertaintyAnswer.FirstOrder(
                estimate.value(),
                estimate.standardUncertainty(),
                Double.isInfinite(degrees) ? null : degrees,
                estimate.value() - half,
                estimate.value() + half,
                lines(budget));
    }

    private static List<UncertaintyAnswer.Line> lines(Budget budget) {
        return budget.contributions().stream().map(UncertaintyCalculation::line).toList();
    }

    private static UncertaintyAnswer.Line line(Contribution part) {
        var input = part.input();
        return new UncertaintyAnswer.Line(
                input.name(),
                input.value(),
                input.standardUncertainty(),
                input.shape().key(),
                part.sensitivity(),
                part.standardUncertainty(),
                part.share());
    }

    private static UncertaintyAnswer.MonteCarlo monteCarlo(Sample sample) {
        var found = new Estimate(sample.mean(), sample.standardDeviation());
        var shortest = sample.shortestInterval(PROBABILITY);
        var symmetric = sample.symmetricInterval(PROBABILITY);
        return new UncertaintyAnswer.MonteCarlo(
                sample.size(),
                found.value(),
                found.standardUncertainty(),
                shortest.low(),
                shortest.high(),
                symmetric.low(),
                symmetric.high());
    }
}
