package org.berrywatt.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan tells about one factor.
 *
 * @param counts number of cells of each level
 * @param teamsComparing teams that build two levels or more
 * @param efficiency share of the precision of a plan without any flaw, in [0, 1]
 * @param power chance of finding the wished ratio between the two levels that are told apart worst; null when nothing can
 *     be told
 * @param smallestRatio smallest ratio that is found four times in five; null as above
 * @param cellsPerTeamNeeded with as many teams, cells each that would find the wished ratio; null when it is found already
 *     or no school has as many
 * @param teamsNeeded with as many cells each, teams that would; null as above
 * @param aliases what it is mixed up with, the strongest first
 */
public record FactorFigures(
        Factor factor,
        List<Integer> counts,
        int teamsComparing,
        double efficiency,
        @Nullable Double power,
        @Nullable Double smallestRatio,
        @Nullable Integer cellsPerTeamNeeded,
        @Nullable Integer teamsNeeded,
        List<Alias> aliases) {

    /** Whether levels have as many cells as each other, or one more. */
    public boolean balanced() {
        int most = counts.stream().mapToInt(count -> count).max().orElseThrow();
        int fewest = counts.stream().mapToInt(count -> count).min().orElseThrow();
        return most - fewest <= 1;
    }

    public boolean answers() {
        return power != null && power >= Power.WANTED;
    }
}
