package org.berrywatt.findings;

import java.util.Map;
import java.util.Optional;
import org.berrywatt.statistics.KruskalWallis;
import org.berrywatt.statistics.Spearman;

/**
 * The one sentence about a parameter, its strength, and the p-value behind it.
 *
 * @param p in (0, 1]; 1 when there is nothing to compare
 */
record Verdict(Strength strength, Sentence sentence, double p) {

    /** Numbers: a steady rise or fall first; a difference without direction is a second look and pays double. */
    static Verdict onNumbers(Levels levels, Optional<Spearman> spearman, Optional<KruskalWallis> kruskalWallis) {
        double trend = spearman.map(Spearman::p).orElse(1.0);
        double difference = kruskalWallis.map(test -> Math.min(1, 2 * test.p())).orElse(1.0);
        if (Strength.of(trend) == Strength.CANNOT_TELL && difference < trend) {
            return of(difference, "differ", levels);
        }
        return of(trend, spearman.map(Spearman::rho).orElse(0.0) > 0 ? "rise" : "fall", levels);
    }

    static Verdict onSorts(Levels levels, Optional<KruskalWallis> kruskalWallis) {
        return of(kruskalWallis.map(KruskalWallis::p).orElse(1.0), "sort", levels);
    }

    private static Verdict of(double p, String shape, Levels levels) {
        Strength strength = Strength.of(p);
        String key = strength == Strength.CANNOT_TELL ? strength.key() : strength.key() + "." + shape;
        String best = levels.best().orElseThrow().key();
        return new Verdict(strength, Sentence.of(key, Map.of("cells", levels.counted(), "bestLevel", best)), p);
    }

    /** What keeps cells from being compared at all, when something does. */
    static Optional<Verdict> nothingToCompare(Levels levels, Entries entries) {
        if (levels.counted() == 0) {
            return Optional.of(nothing("noCells", levels));
        }
        if (levels.withWorkingCells().size() == 1) {
            return Optional.of(nothing("oneLevel", levels));
        }
        return entries.size() < 3 ? Optional.of(nothing("tooFew", levels)) : Optional.empty();
    }

    private static Verdict nothing(String reason, Levels levels) {
        Sentence sentence =
                Sentence.of("nothingToCompare." + reason, Map.of("cells", levels.counted(), "made", levels.made()));
        return new Verdict(Strength.NOTHING_TO_COMPARE, sentence, 1);
    }
}
