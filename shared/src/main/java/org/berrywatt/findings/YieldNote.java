package org.berrywatt.findings;

import java.util.Comparator;
import java.util.Map;

/** Says in words what the medians of working cells hide: how many cells of each level broke. */
final class YieldNote {

    private YieldNote() {}

    static Sentence of(Levels levels) {
        if (levels.failed() == 0) {
            return Sentence.of("yield.none", Map.of("made", levels.made()));
        }
        Level most = levels.all().stream()
                .max(Comparator.comparingDouble(Level::failureShare))
                .orElseThrow();
        Level least = levels.all().stream()
                .min(Comparator.comparingDouble(Level::failureShare))
                .orElseThrow();
        return most.failureShare() == least.failureShare() ? alike(levels) : differs(most, least);
    }

    private static Sentence alike(Levels levels) {
        return Sentence.of("yield.alike", Map.of("failed", levels.failed(), "made", levels.made()));
    }

    private static Sentence differs(Level most, Level least) {
        return Sentence.of(
                "yield.differs",
                Map.of(
                        "worstLevel", most.key(),
                        "worstFailed", most.failed(),
                        "worstMade", most.made(),
                        "bestLevel", least.key(),
                        "bestFailed", least.failed(),
                        "bestMade", least.made()));
    }
}
