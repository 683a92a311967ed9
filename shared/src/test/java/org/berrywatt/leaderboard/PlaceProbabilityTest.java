package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlaceProbabilityTest {
    /** Four standard deviations of a share of 10,000 trials. */
    private static final double CHANCE = 0.02;

    /**
     * Independent normal scores: chances and 95 % intervals of ranks by quadrature at 25 digits, and the chance to be above
     * another, Φ((m - m') / √(u² + u'²)), computed from the definition in the file (no publication).
     */
    @Test
    void findsThePlacesOfIndependentNormalResults() throws IOException {
        for (JsonNode one : published().get("cases")) {
            var standings = Board.of(teams(one), new Terms(Rule.usual(), 1, true, Teams.TRIALS))
                    .standings();
            for (int i = 0; i < standings.size(); i++) {
                var place = Objects.requireNonNull(standings.get(i).place());
                int team = index(standings.get(i), one);
                assertThat(place.best())
                        .isEqualTo(one.get("rank_interval_95").get(team).get(0).asInt());
                assertThat(place.worst())
                        .isEqualTo(one.get("rank_interval_95").get(team).get(1).asInt());
                if (i + 1 < standings.size()) {
                    var row = one.get("probability_better_pairwise").get(team);
                    double expected = Double.parseDouble(
                            row.get(index(standings.get(i + 1), one)).asString());
                    assertThat(Objects.requireNonNull(place.chanceAboveNext())).isCloseTo(expected, within(CHANCE));
                }
            }
        }
    }

    private static List<TeamCells> teams(JsonNode one) {
        return IntStream.range(0, one.get("mean").size())
                .mapToObj(i -> Teams.team(
                        "team " + i,
                        Teams.counts("cell " + i, number(one, "mean", i), number(one, "standard_uncertainty", i))))
                .toList();
    }

    private static int index(Standing standing, JsonNode one) {
        return IntStream.range(0, one.get("mean").size())
                .filter(i -> Teams.id("team " + i).equals(standing.teamId()))
                .findFirst()
                .orElseThrow();
    }

    private static double number(JsonNode one, String name, int i) {
        return Double.parseDouble(one.get(name).get(i).asString());
    }

    private static JsonNode published() throws IOException {
        try (InputStream file =
                PlaceProbabilityTest.class.getResourceAsStream("/leaderboard/ranking_uncertainty.json")) {
            return JsonMapper.shared().readTree(file);
        }
    }
}
