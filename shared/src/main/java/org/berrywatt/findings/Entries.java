package org.berrywatt.findings;

import java.util.Arrays;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.Members;
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
        int[] level = new int[teamCount];
        double[] value = new double[teamCount];
        int[] day = new int[teamCount];
        int next = 0;
        for (int[] own : Members.of(study.teamsOf(cells))) {
            if (own.length > 0) {
                level[next] = mostUsed(own, levels);
                value[next] = medianAt(level[next], own, levels, values);
                day[next++] = study.day(cells[own[0]]);
            }
        }
        return new Entries(level, value, day, true, teamCount);
    }

    /** Of several used alike, the first. */
    private static int mostUsed(int[] own, int[] levels) {
        int[] used = new int[own.length];
        Arrays.setAll(used, i -> levels[own[i]]);
        Arrays.sort(used);
        int most = used[0];
        for (int start = 0, longest = 0, i = 1; i <= used.length; i++) {
            if (i == used.length || used[i] != used[start]) {
                most = i - start > longest ? used[start] : most;
                longest = Math.max(longest, i - start);
                start = i;
            }
        }
        return most;
    }

    private static double medianAt(int level, int[] own, int[] levels, double[] values) {
        double[] found = new double[own.length];
        int count = 0;
        for (int i : own) {
            if (levels[i] == level) {
                found[count++] = values[i];
            }
        }
        return Quantiles.median(Arrays.copyOf(found, count)).orElse(Double.NaN);
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
