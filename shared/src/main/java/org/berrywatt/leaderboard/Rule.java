package org.berrywatt.leaderboard;

import java.util.List;

/**
 * What is compared and how a team's cells count.
 *
 * @param count one of the metric's {@link Metric#counts}
 */
public record Rule(Metric metric, Count count) {

    /**
     * Checks that the two make sense together.
     *
     * @throws IllegalArgumentException when they do not
     */
    public Rule {
        if (!isSensible(metric, count)) {
            throw new IllegalArgumentException(
                    count.key() + " makes no sense with " + metric.key() + ", only " + metric.counts());
        }
    }

    /** Whether cells may count in that way under a metric. */
    public static boolean isSensible(Metric metric, Count count) {
        return metric.counts().contains(count);
    }

    /** Power density by the median of the declared cells. */
    public static Rule usual() {
        return new Rule(new PowerDensity(), Count.MEDIAN);
    }

    /** All rules that make sense, the default first. */
    public static List<Rule> all() {
        return Metric.all().stream()
                .flatMap(metric -> metric.counts().stream().map(count -> new Rule(metric, count)))
                .toList();
    }

    /** Names the rule: the key of its count, after the key of its metric where that is not the default. */
    public String key() {
        return metric instanceof PowerDensity ? count.key() : metric.key() + "." + count.key();
    }

    /**
     * The rule of a key.
     *
     * @throws java.util.NoSuchElementException when none has it
     */
    public static Rule of(String key) {
        return all().stream().filter(rule -> rule.key().equals(key)).findFirst().orElseThrow();
    }

    /** Whether the rule takes a cell's result, and if not, why. */
    public CellEntry entry(Candidate cell) {
        if (cell.score() instanceof Score.Missing missing) {
            return new CellEntry.Excluded(cell.cellId(), cell.verification(), missing.obstacle());
        }
        if (count == Count.BEST_VERIFIED && cell.verification() != Verification.VERIFIED) {
            return new CellEntry.Excluded(
                    cell.cellId(), cell.verification(), cell.verification().obstacle());
        }
        var found = (Score.Found) cell.score();
        return new CellEntry.Counts(cell.cellId(), found.value(), found.trials(), cell.verification());
    }
}
