package org.berrywatt.leaderboard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Puts teams in order, with places that say how sure they are.
 *
 * <p><b>Order.</b> By the figure that the cells' results make under the rule; equal figures by the team's identity.
 *
 * <p><b>Places.</b> One team is <em>clearly better</em> than another when it is above in at least 97.5 % of the Monte Carlo
 * trials; what both share in a trial, such as the calibration of one lux meter, cancels there. Going down the order, a team
 * shares the place of the group above it as long as no team of that group is clearly better; otherwise it opens a new group,
 * whose place is one more than the number of teams above. The place interval holds the team in 95 % of the trials, where the
 * place in a trial is one more than the number of teams above (JCGM 101:2008, clause 7, applied to a rank).
 *
 * <p>The standings depend on the teams and terms alone: no order of teams, cells or changes makes a difference, to the last bit.
 * A board does not change; {@link #with} gives another one that counts only what changed. Memory: 10 bytes for each ranked team
 * and trial beside the results themselves.
 */
public final class Board {
    private static final Comparator<Contender> BEST_FIRST = Comparator.comparingDouble(
                    (Contender team) -> team.figure().value())
            .reversed()
            .thenComparing(Contender::teamId);

    private final Terms terms;
    private final SortedMap<UUID, Tally> tallies;
    private final Contest contest;

    private Board(Terms terms, SortedMap<UUID, Tally> tallies, Contest contest) {
        this.terms = terms;
        this.tallies = tallies;
        this.contest = contest;
    }

    /**
     * A board of all teams.
     *
     * @param teams in any order
     * @throws IllegalArgumentException when a result's trials are not as many as agreed
     */
    public static Board of(List<TeamCells> teams, Terms terms) {
        var board = new Board(terms, new TreeMap<>(), new Contest(terms.trials()));
        teams.forEach(board::put);
        return board;
    }

    /** This board with a team's cells as they are now; the team may be new. */
    public Board with(TeamCells team) {
        var board = copy();
        board.put(team);
        return board;
    }

    /** This board without a team. */
    public Board without(UUID teamId) {
        var board = copy();
        board.tallies.remove(teamId);
        board.contest.remove(teamId);
        return board;
    }

    /** Best first, teams that are not ranked last. */
    public List<Standing> standings() {
        var bestFirst = contest.contenders().stream().sorted(BEST_FIRST).toList();
        var ranked = ranked(bestFirst);
        var ids = bestFirst.stream().map(Contender::teamId).collect(Collectors.toSet());
        var unranked = tallies.values().stream()
                .filter(tally -> !ids.contains(tally.teamId()))
                .map(Tally::unranked);
        return Stream.concat(ranked, unranked).toList();
    }

    private Board copy() {
        return new Board(terms, new TreeMap<>(tallies), contest.copy());
    }

    private void put(TeamCells team) {
        var tally = Tally.of(team, terms);
        var contender = tally.contender(terms);
        tallies.put(team.teamId(), tally);
        if (contender == null) {
            contest.remove(team.teamId());
        } else {
            contest.put(contender);
        }
    }

    private Stream<Standing> ranked(List<Contender> bestFirst) {
        var places = places(bestFirst);
        return IntStream.range(0, bestFirst.size())
                .mapToObj(i -> bestFirst
                        .get(i)
                        .standing(
                                places.get(i), contest.placeInterval(bestFirst.get(i)), chanceAboveNext(bestFirst, i)));
    }

    private @Nullable Double chanceAboveNext(List<Contender> bestFirst, int i) {
        return i + 1 < bestFirst.size() ? contest.chanceAbove(bestFirst.get(i), bestFirst.get(i + 1)) : null;
    }

    private List<Integer> places(List<Contender> bestFirst) {
        var places = new ArrayList<Integer>();
        var groupStart = 0;
        for (int i = 0; i < bestFirst.size(); i++) {
            var team = bestFirst.get(i);
            var apart =
                    bestFirst.subList(groupStart, i).stream().anyMatch(above -> contest.isClearlyAbove(above, team));
            groupStart = apart ? i : groupStart;
            places.add(groupStart + 1);
        }
        return places;
    }
}
