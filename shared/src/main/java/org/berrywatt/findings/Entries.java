package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.Quantiles;

/**
 * What enters the comparison of a parameter's levels. Cells of one team share hands, paste and plate. Where teams tried several
 * levels, cells are compared within their team. Where hardly a team did, the level was drawn once per team, so every team enters once, with the
 * median of its cells at the level it used most, and is compared with teams of the same day.
 */
final class Entries {

    private final int[] levels;
    private final double[] logs;
    private final int[] blocks;
    private final boolean teamsOnly;
    private final int teamCount;

    private Entries(int[] levels, double[] logs, int[] blocks, boolean teamsOnly, int teamCount) {
        this.levels = levels;
        this.logs = logs;
        this.blocks = blocks;
        this.teamsOnly = teamsOnly;
        this.teamCount = teamCount;
    }

    static Entries of(Study study, Factor factor) {
        return of(
                study,
                factor,
                factor.recordedAmong(study.working()),
                study.logsOf(factor.recordedAmong(study.working())));
    }

    /** @param values of the given cells, in their order */
    static Entries of(Study study, Factor factor, int[] cells, double[] values) {
        int[] levels = Arrays.stream(cells).map(factor::code).toArray();
        int[] teams = study.teamsOf(cells);
        int teamCount = (int) Arrays.stream(teams).distinct().count();
        Entries within = new Entries(levels, values, teams, false, teamCount);
        Entries between = perTeam(study, cells, levels, values, teamCount);
        return within.logDeals() >= between.logDeals() && within.logDeals() > 0 ? within : between;
    }

    /** The more ways there are to deal the values anew, the smaller a difference can be told from chance. */
    private double logDeals() {
        return BlockedTest.logDeals(levels, blocks);
    }

    private static Entries perTeam(Study study, int[] cells, int[] levels, double[] values, int teamCount) {
        Map<Integer, List<Integer>> teams = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i++) {
            teams.computeIfAbsent(study.team(cells[i]), team -> new ArrayList<>())
                    .add(i);
        }
        int[] level = new int[teams.size()];
        double[] value = new double[teams.size()];
        int[] day = new int[teams.size()];
        int next = 0;
        for (List<Integer> own : teams.values()) {
            int most = mostUsed(own, levels);
            level[next] = most;
            value[next] = Quantiles.median(own.stream()
                            .filter(i -> levels[i] == most)
                            .mapToDouble(i -> values[i])
                            .toArray())
                    .orElse(Double.NaN);
            day[next++] = study.day(cells[own.get(0)]);
        }
        return new Entries(level, value, day, true, teamCount);
    }

    private static int mostUsed(List<Integer> own, int[] levels) {
        Map<Integer, Integer> counts = new TreeMap<>();
        own.forEach(i -> counts.merge(levels[i], 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** Codes of the levels. */
    int[] levels() {
        return levels;
    }

    /** Logarithms of the performance, or whatever values were given. */
    double[] logs() {
        return logs;
    }

    int[] blocks() {
        return blocks;
    }

    /** Whether each team enters once. */
    boolean teamsOnly() {
        return teamsOnly && teamCount > 1;
    }

    int size() {
        return levels.length;
    }

    int levelCount() {
        return (int) Arrays.stream(levels).distinct().count();
    }
}
