package org.berrywatt.findings;

import java.util.Optional;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.Resampling;
import org.berrywatt.statistics.Spearman;

/**
 * One parameter, looked at alone.
 *
 * @param p of the look that decides, in (0, 1]; 1 when there is nothing to compare
 * @param shape {@code "rise"}, {@code "fall"}, {@code "differ"} or, for sorts, {@code "sort"}
 * @param nothing why there is nothing to compare, when there is not
 */
record Look(
        Factor factor,
        Levels levels,
        Entries entries,
        Tests tests,
        Optional<Effect> effect,
        double p,
        String shape,
        Optional<String> nothing) {

    static Look at(Study study, Factor factor, Resampling resampling) {
        Levels levels = Levels.of(study, factor, resampling);
        Entries entries = Entries.of(study, factor);
        Tests tests = Tests.of(study, factor, entries, levels, resampling);
        Optional<String> nothing = nothing(levels, entries);
        Look plain = new Look(factor, levels, entries, tests, Effect.of(factor, entries), 1, "sort", nothing);
        return nothing.isPresent() ? plain : factor.isNumber() ? plain.number() : plain.sort();
    }

    /** Only p, without all that stands beside it. */
    static double pOf(Study study, Factor factor, Resampling resampling) {
        Entries entries = Entries.of(study, factor);
        double trend = factor.isNumber()
                ? Tests.trend(factor, entries, resampling).map(BlockedTest::p).orElse(1.0)
                : 1;
        boolean levels = !factor.isNumber() || (trend > 0.05 && entries.levelCount() <= Levels.FEW);
        double difference = levels
                ? Tests.difference(entries, resampling).map(BlockedTest::p).orElse(1.0)
                : 1;
        return Math.min(trend, factor.isNumber() ? 2 * difference : difference);
    }

    /** What keeps cells from being compared at all. */
    private static Optional<String> nothing(Levels levels, Entries entries) {
        if (levels.counted() == 0) {
            return Optional.of("noCells");
        }
        if (levels.withWorkingCells().size() == 1) {
            return Optional.of("oneLevel");
        }
        if (entries.levelCount() < 2) {
            return Optional.of("oneLevelEach");
        }
        return entries.size() < 3 ? Optional.of("tooFew") : Optional.empty();
    }

    private Look sort() {
        return decided(tests.difference().map(BlockedTest::p).orElse(1.0), "sort");
    }

    /** A steady rise or fall first; a difference without direction is a second look and pays double. */
    private Look number() {
        double trend = tests.trend().map(BlockedTest::p).orElse(1.0);
        double difference =
                tests.difference().map(test -> Math.min(1, 2 * test.p())).orElse(1.0);
        return Strength.of(trend) == Strength.CANNOT_TELL && difference < trend
                ? decided(difference, "differ")
                : decided(trend, direction());
    }

    private String direction() {
        double rising = effect.filter(it -> factor.isNumber())
                .map(it -> Math.log(it.ratio()))
                .orElseGet(() -> tests.spearman().map(Spearman::rho).orElse(0.0));
        return rising > 0 ? "rise" : "fall";
    }

    private Look decided(double p, String shape) {
        return new Look(factor, levels, entries, tests, effect, p, shape, nothing);
    }

    boolean compares() {
        return nothing.isEmpty();
    }
}
