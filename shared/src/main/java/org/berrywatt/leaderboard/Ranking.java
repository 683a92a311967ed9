package org.berrywatt.leaderboard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Puts teams in order.
 *
 * <p><b>Who is ranked.</b> A team is ranked from its first cell with a result on, or when all its declared cells have failed.
 * While entry is open, declared cells that are still outstanding are left out: neither 0 nor counted. Once entry is closed they
 * count as 0, so that no team gains by leaving its weak cells unmeasured.
 *
 * <p><b>Places.</b> Teams are ordered by their figure. One team is <em>clearly better</em> than another when the 95 % interval
 * of the logarithm of their ratio lies above 0; what both share, such as the calibration of one lux meter, cancels there.
 * Going down the order, a team shares the place of the group above it as long as no team of that group is clearly better;
 * otherwise it opens a new group, whose place is one more than the number of teams above. So teams that share a place cannot
 * be told apart, and a chain of small steps does not put first and last on one place. The best place that uncertainty allows
 * is one more than the number of clearly better teams, the worst is the number of teams less the clearly worse ones.
 *
 * <p>The result depends on the recorded cells alone: no order of teams or cells changes it.
 */
public final class Ranking {
    private static final Comparator<RankedTeam> BEST_FIRST = Comparator.comparingDouble(
                    (RankedTeam team) -> team.figure().valueWm2())
            .reversed()
            .thenComparing(team -> team.tally().teamId());

    private Ranking() {}

    /**
     * Standings, best first, teams that are not ranked last.
     *
     * @param teams in any order
     * @param cellsPerTeam number of cells each team declares, in [1, ∞); a team that registered more is measured by all of them
     * @param entryOpen whether readings may still come in
     */
    public static List<Standing> of(List<TeamCells> teams, Rule rule, int cellsPerTeam, boolean entryOpen) {
        var tallies = teams.stream()
                .map(team -> Tally.of(team, rule, cellsPerTeam, entryOpen))
                .toList();
        var ranked =
                tallies.stream().flatMap(Ranking::ranked).sorted(BEST_FIRST).toList();
        var unranked = tallies.stream()
                .filter(tally -> tally.figure() == null)
                .sorted(Comparator.comparing(Tally::teamId))
                .map(Tally::unranked);
        return Stream.concat(standings(ranked), unranked).toList();
    }

    private static Stream<RankedTeam> ranked(Tally tally) {
        var figure = tally.figure();
        return figure == null ? Stream.empty() : Stream.of(new RankedTeam(tally, figure));
    }

    private static Stream<Standing> standings(List<RankedTeam> bestFirst) {
        var places = places(bestFirst);
        return IntStream.range(0, bestFirst.size())
                .mapToObj(i -> bestFirst.get(i).standing(places.get(i), bestFirst));
    }

    private static List<Integer> places(List<RankedTeam> bestFirst) {
        var places = new ArrayList<Integer>();
        var groupStart = 0;
        for (int i = 0; i < bestFirst.size(); i++) {
            var team = bestFirst.get(i);
            var apart = bestFirst.subList(groupStart, i).stream().anyMatch(above -> above.isClearlyAbove(team));
            groupStart = apart ? i : groupStart;
            places.add(groupStart + 1);
        }
        return places;
    }
}
