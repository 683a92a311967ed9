package org.berrywatt.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.findings.Confounding.Pair;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** The few further cells that would tell apart what is confounded, or sharpen what is a hint. */
final class NextCells {

    private static final int MOST_MORE = 40;

    private NextCells() {}

    static List<Sentence> of(Confounding confounding, List<ParameterFinding> findings) {
        Stream<Sentence> apart = confounding.pairs().stream()
                .filter(pair -> pair.firstTold() == 0 || pair.secondTold() == 0)
                .flatMap(pair -> crossed(pair).stream());
        Stream<Sentence> sharper = findings.stream()
                .filter(finding -> finding.strength() == Strength.SUGGESTIVE)
                .flatMap(finding -> more(finding).stream());
        return Stream.concat(apart, sharper).limit(12).toList();
    }

    /** An empty place of the table that would join two of its pieces, and the place that mirrors it. */
    private static Optional<Sentence> crossed(Pair pair) {
        LevelTable table = pair.counts();
        int row = 0;
        int column = firstFilled(table, row);
        for (int other = 1; other < table.rows(); other++) {
            int far = firstFilled(table, other);
            if (table.count(row, far) == 0 && table.count(other, column) == 0) {
                return Optional.of(Sentence.of(
                        "next.apart",
                        Map.of(
                                "firstParameter", pair.first(),
                                "firstLevel", table.row(row),
                                "firstOtherLevel", table.row(other),
                                "secondParameter", pair.second(),
                                "secondLevel", table.column(far),
                                "secondOtherLevel", table.column(column))));
            }
        }
        return Optional.empty();
    }

    private static int firstFilled(LevelTable table, int row) {
        int column = 0;
        while (column < table.columns() - 1 && table.count(row, column) == 0) {
            column++;
        }
        return column;
    }

    /** Cells per level until the ratio found would be clear in four of five classes, less those there are. */
    private static Optional<Sentence> more(ParameterFinding finding) {
        if (finding.effect().isEmpty()) {
            return Optional.empty();
        }
        Effect effect = finding.effect().orElseThrow().upwards();
        NormalDistribution normal = new NormalDistribution();
        double both = normal.inverseCumulativeProbability(0.9975) + normal.inverseCumulativeProbability(0.8);
        double needed = 2 * Math.pow(both * effect.spread() / Math.log(effect.ratio()), 2);
        int have = finding.levels().stream()
                .filter(level ->
                        level.key().equals(effect.toLevel()) || level.key().equals(effect.fromLevel()))
                .mapToInt(Level::counted)
                .min()
                .orElse(0);
        int more = (int) Math.ceil(Math.max(2, needed - have));
        return more > MOST_MORE
                ? Optional.empty()
                : Optional.of(Sentence.of(
                        "next.sharpen",
                        Map.of(
                                "firstParameter", finding.parameter(),
                                "cells", more,
                                "firstLevel", effect.toLevel(),
                                "firstOtherLevel", effect.fromLevel())));
    }
}
