package org.berrywatt.server.findings;

import java.util.List;
import java.util.OptionalDouble;
import org.berrywatt.contract.ParameterAnswer.Span;
import org.berrywatt.contract.StudyAnswer;
import org.berrywatt.findings.Confounding.Pair;
import org.berrywatt.findings.JointModel;
import org.berrywatt.findings.StudyFindings;
import org.jspecify.annotations.Nullable;

/** Findings as they travel. */
public final class StudyAnswers {

    private StudyAnswers() {}

    /** All findings of a study. */
    public static StudyAnswer of(StudyFindings found) {
        return new StudyAnswer(
                found.parameters().stream().map(ParameterAnswers::of).toList(),
                found.joint().map(StudyAnswers::joint).orElse(null),
                found.confounding().pairs().stream().map(StudyAnswers::pair).toList(),
                found.confounding().aliasSets(),
                found.next().stream().map(ParameterAnswers::remark).toList());
    }

    private static StudyAnswer.@Nullable Joint joint(JointModel model) {
        List<StudyAnswer.Term> terms =
                model.terms().stream().map(StudyAnswers::term).toList();
        boolean finite = terms.stream()
                .allMatch(term -> Double.isFinite(term.f())
                        && term.means().stream()
                                .allMatch(
                                        mean -> Double.isFinite(mean.interval().high())));
        return finite
                ? new StudyAnswer.Joint(
                        model.n(), model.teams(), terms, model.left(), model.teamDeviation(), model.cellDeviation())
                : null;
    }

    private static StudyAnswer.Term term(JointModel.Term term) {
        return new StudyAnswer.Term(
                term.parameter(),
                term.f(),
                term.degreesBetween(),
                term.degreesWithin(),
                term.p(),
                term.holm(),
                orNull(term.inflation()),
                term.means().stream()
                        .map(mean ->
                                new StudyAnswer.Mean(mean.level(), mean.value(), new Span(mean.low(), mean.high())))
                        .toList());
    }

    private static StudyAnswer.Pair pair(Pair pair) {
        return new StudyAnswer.Pair(pair.first(), pair.second(), pair.cramersV(), pair.firstTold(), pair.secondTold());
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
