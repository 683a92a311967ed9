package org.berrywatt.server.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.berrywatt.contract.ParameterAnswer;
import org.berrywatt.contract.ParameterAnswer.Blocked;
import org.berrywatt.contract.ParameterAnswer.Span;
import org.berrywatt.contract.Remark;
import org.berrywatt.findings.Effect;
import org.berrywatt.findings.Level;
import org.berrywatt.findings.ParameterFinding;
import org.berrywatt.findings.Sentence;
import org.berrywatt.findings.Tests;
import org.berrywatt.findings.YieldCurve;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.MannWhitney;
import org.jspecify.annotations.Nullable;

/** A finding about one parameter as it travels. */
final class ParameterAnswers {

    /** Nearly every cell then has a value of its own, and a row of one cell says nothing. */
    private static final int MOST_NUMBERS = 200;

    private ParameterAnswers() {}

    static ParameterAnswer of(ParameterFinding finding) {
        return new ParameterAnswer(
                finding.parameter(),
                finding.number() ? "number" : "sort",
                levels(finding),
                tests(finding.tests()),
                finding.effect().map(ParameterAnswers::effect).orElse(null),
                finding.yieldCurve().map(ParameterAnswers::curve).orElse(null),
                finding.strength().key(),
                finding.yieldStrength().key(),
                finding.p(),
                finding.holm(),
                finding.entries(),
                finding.teamsOnly(),
                finding.confoundedWith().orElse(null),
                remark(finding.sentence()),
                finding.notes().stream().map(ParameterAnswers::remark).toList());
    }

    static Remark remark(Sentence sentence) {
        return new Remark(sentence.key(), sentence.values());
    }

    private static List<ParameterAnswer.Level> levels(ParameterFinding finding) {
        return finding.number() && finding.levels().size() > MOST_NUMBERS
                ? List.of()
                : finding.levels().stream().map(ParameterAnswers::level).toList();
    }

    private static ParameterAnswer.Level level(Level level) {
        return new ParameterAnswer.Level(
                level.key(),
                orNull(level.number()),
                level.made(),
                level.counted(),
                level.failed(),
                orNull(level.median()),
                level.interval().map(it -> new Span(it.low(), it.high())).orElse(null),
                level.came().map(it -> it.share()).orElse(null),
                level.came().map(it -> new Span(it.low(), it.high())).orElse(null));
    }

    private static ParameterAnswer.Tests tests(Tests tests) {
        return new ParameterAnswer.Tests(
                blocked(tests.difference()),
                blocked(tests.trend()),
                blocked(tests.composite()),
                blocked(tests.yield()),
                tests.kruskalWallis()
                        .map(it -> new ParameterAnswer.RankTest(
                                it.h(),
                                it.degreesOfFreedom(),
                                it.p(),
                                it.n(),
                                it.evaluation().key()))
                        .orElse(null),
                tests.mannWhitney().map(ParameterAnswers::rankSum).orElse(null),
                tests.anova()
                        .map(it ->
                                new ParameterAnswer.Variance(it.f(), it.degreesBetween(), it.degreesWithin(), it.p()))
                        .orElse(null),
                tests.spearman()
                        .map(it -> new ParameterAnswer.RankCorrelation(
                                it.rho(), it.p(), it.n(), it.evaluation().key()))
                        .orElse(null),
                tests.theilSen()
                        .filter(it -> Double.isFinite(it.low()) && Double.isFinite(it.high()))
                        .map(it -> new ParameterAnswer.Slope(it.slope(), new Span(it.low(), it.high()), it.n()))
                        .orElse(null),
                tests.fisher()
                        .map(it -> new ParameterAnswer.Exact(
                                it.p(), it.n(), it.evaluation().key()))
                        .orElse(null));
    }

    private static @Nullable Blocked blocked(Optional<BlockedTest> test) {
        return test.map(it -> new Blocked(
                        it.statistic(),
                        it.degreesOfFreedom(),
                        it.p(),
                        it.n(),
                        it.blocks(),
                        it.evaluation().key()))
                .orElse(null);
    }

    /** Shifts of logarithms are ratios. */
    private static ParameterAnswer.RankSum rankSum(MannWhitney it) {
        return new ParameterAnswer.RankSum(
                it.u(),
                it.p(),
                Math.exp(it.shift()),
                new Span(Math.exp(it.low()), Math.exp(it.high())),
                it.evaluation().key());
    }

    private static ParameterAnswer.@Nullable Effect effect(Effect it) {
        boolean finite = Double.isFinite(it.high()) && Double.isFinite(it.smallest()) && Double.isFinite(it.ratio());
        return finite
                ? new ParameterAnswer.Effect(
                        it.fromLevel(), it.toLevel(), it.ratio(), new Span(it.low(), it.high()), it.smallest())
                : null;
    }

    private static ParameterAnswer.YieldCurve curve(YieldCurve it) {
        return new ParameterAnswer.YieldCurve(
                it.intercept(), it.slope(), new Span(it.slopeLow(), it.slopeHigh()), it.p());
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
