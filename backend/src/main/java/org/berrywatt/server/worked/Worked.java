package org.berrywatt.server.worked;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.contract.BudgetLine;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.StepAnswer;
import org.berrywatt.normalise.Note;
import org.berrywatt.normalise.Step;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.Contribution;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Interval;

/** Estimates, steps, budgets and notes as they travel. */
public final class Worked {

    private Worked() {}

    public static Figure figure(Estimate estimate) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), estimate.low(), estimate.high());
    }

    /** With the interval that the trials found. */
    public static Figure figure(Estimate estimate, Interval interval) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), interval.low(), interval.high());
    }

    public static Figure times(Figure figure, double factor) {
        return new Figure(
                figure.value() * factor,
                figure.standardUncertainty() * factor,
                figure.low() * factor,
                figure.high() * factor);
    }

    public static List<StepAnswer> steps(List<Step> steps) {
        return steps.stream()
                .map(step -> new StepAnswer(step.key(), step.formula(), step.substituted(), step.result()))
                .toList();
    }

    public static List<BudgetLine> budget(Budget budget) {
        return budget.contributions().stream().map(Worked::line).toList();
    }

    public static Stream<Remark> notes(List<Note> notes) {
        return notes.stream().map(note -> new Remark(note.key(), Map.copyOf(note.values())));
    }

    private static BudgetLine line(Contribution contribution) {
        var input = contribution.input();
        return new BudgetLine(
                input.name(),
                input.value(),
                input.unit(),
                input.standardUncertainty(),
                input.shape().key(),
                contribution.sensitivity(),
                contribution.share());
    }
}
