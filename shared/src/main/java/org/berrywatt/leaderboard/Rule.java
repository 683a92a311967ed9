package org.berrywatt.leaderboard;

import java.util.Arrays;
import java.util.List;

/**
 * What is compared and how a team's cells count.
 *
 * @param count yield is a share of all declared cells, so its count is the mean, whatever was asked for
 */
public record Rule(Metric metric, Count count) {

    /** Puts the count right. */
    public Rule {
        count = metric == Metric.YIELD ? Count.MEAN : count;
    }

    /** Power density by the median of the declared cells. */
    public static Rule usual() {
        return new Rule(Metric.POWER_DENSITY, Count.MEDIAN);
    }

    /** The rules that readings of one lab day can answer, the default first. */
    public static List<Rule> offered() {
        return Arrays.stream(Count.values())
                .map(count -> new Rule(Metric.POWER_DENSITY, count))
                .toList();
    }

    /** Names the rule: the key of its count, after the key of its metric where that is not the default. */
    public String key() {
        return metric == Metric.POWER_DENSITY ? count.key() : metric.key() + "." + count.key();
    }

    /**
     * The offered rule of a key.
     *
     * @throws java.util.NoSuchElementException when none has it
     */
    public static Rule of(String key) {
        return offered().stream()
                .filter(rule -> rule.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Whether the rule takes a cell's result, and if not, why.
     *
     * @param mainStation the station at which most results of the day were measured
     */
    public CellEntry entry(Candidate cell, String mainStation) {
        if (metric == Metric.EFFICIENCY_AS_MEASURED && !cell.station().equals(mainStation)) {
            return new CellEntry.Excluded(cell.cellId(), cell.verification(), Obstacle.OTHER_STATION);
        }
        if (count == Count.BEST_VERIFIED && cell.verification() != Verification.VERIFIED) {
            return new CellEntry.Excluded(
                    cell.cellId(), cell.verification(), cell.verification().obstacle());
        }
        return new CellEntry.Counts(cell.cellId(), cell.value(), cell.trials(), cell.verification());
    }
}
