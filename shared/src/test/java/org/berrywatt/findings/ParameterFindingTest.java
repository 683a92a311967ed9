package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Expected p-values are found by counting arrangements by hand; the tests themselves are checked in statistics. */
class ParameterFindingTest {

    @Test
    void callsSteadyRiseOverSevenCellsClear() {
        // 2 of 7! = 5040 orders are perfect: p = 0.0004
        SchoolClass rising = SchoolClass.empty();
        for (int i = 1; i <= 7; i++) {
            rising.number(400 + 10 * i, "team " + i, i);
        }
        ParameterFinding finding = rising.finding();
        assertThat(finding.strength()).isEqualTo(Strength.CLEAR);
        assertThat(finding.sentence().key()).isEqualTo("finding.clear.rise");
        assertThat(finding.sentence().values()).containsEntry("cells", 7);
        assertThat(note(finding, "finding.chance")).containsEntry("perThousand", 1);
    }

    @Test
    void namesFallWhenLowerNumbersDidBetter() {
        ParameterFinding finding = SchoolClass.empty()
                .number(1, "a", 9)
                .number(2, "b", 8)
                .number(3, "c", 7)
                .number(4, "d", 6)
                .number(5, "e", 5)
                .finding();
        // 2 of 5! = 120 orders are perfect: p = 0.0167
        assertThat(finding.sentence().key()).isEqualTo("finding.suggestive.fall");
    }

    @Test
    void seesLevelsDifferWithoutSteadyDirection() {
        // the middle number is best: rank correlation 0, though no ranks overlap
        SchoolClass hump = SchoolClass.empty();
        for (int i = 0; i < 4; i++) {
            String team = i % 2 == 0 ? "a" : "b";
            hump.number(400, team, 1 + 2 * i).number(450, team, 20 + i).number(500, team, 2 + 2 * i);
        }
        ParameterFinding finding = hump.finding();
        assertThat(finding.sentence().key()).isEqualTo("finding.suggestive.differ");
        assertThat(finding.sentence().values()).containsEntry("bestLevel", "450");
    }

    @Test
    void cannotTellFromThreeAgainstThree() {
        // the most extreme 2 of 20 deals: p = 0.1
        ParameterFinding finding = SchoolClass.empty()
                .sorts("elder", "abc", 4, 5, 6)
                .sorts("sloe", "def", 1, 2, 3)
                .finding();
        assertThat(finding.strength()).isEqualTo(Strength.CANNOT_TELL);
        assertThat(finding.tests().kruskalWallis().orElseThrow().p()).isCloseTo(0.1, within(1e-15));
        assertThat(note(finding, "finding.chance")).containsEntry("perThousand", 100);
        assertThat(keys(finding)).doesNotContain("finding.size");
    }

    @Test
    void namesBestLevelAndHowManyTimesItsPower() {
        // fifth root of (6 7 9 10 11) / (1 2 3 4 5) = 346.5^(1/5) = 3.22
        // 2 of the 252 deals of ten into fives are extreme: p = 0.0079
        ParameterFinding finding = SchoolClass.empty()
                .sorts("elder", "abcde", 6, 7, 9, 10, 11)
                .sorts("sloe", "fghij", 1, 2, 3, 4, 5)
                .finding();
        assertThat(finding.sentence().key()).isEqualTo("finding.suggestive.sort");
        assertThat(finding.sentence().values()).containsEntry("bestLevel", "elder");
        assertThat(note(finding, "finding.size"))
                .containsAllEntriesOf(Map.of("ratio", 3.2, "bestLevel", "elder", "worstLevel", "sloe"));
    }

    @Test
    void doesNotCallLevelOfOneCellBest() {
        ParameterFinding finding = SchoolClass.empty()
                .sorts("elder", "abcde", 6, 7, 9, 10, 11)
                .sorts("sloe", "fghij", 1, 2, 3, 4, 5)
                .sorts("haw", "k", 12)
                .finding();
        assertThat(finding.sentence().values()).containsEntry("bestLevel", "elder");
    }

    @Test
    void statesYieldBesideMediansOfSurvivors() {
        ParameterFinding finding = SchoolClass.empty()
                .sorts("fragile", "ab", 9, 8)
                .failed("fragile", 4)
                .sorts("sturdy", "abcd", 5, 6, 7, 4)
                .failed("sturdy", 1)
                .waiting("sturdy", 1)
                .finding();
        assertThat(finding.notes().get(0).key()).isEqualTo("finding.yield.differs");
        assertThat(finding.notes().get(0).values())
                .containsAllEntriesOf(Map.of("worstLevel", "fragile", "worstFailed", 4, "worstMade", 6))
                .containsAllEntriesOf(Map.of("bestLevel", "sturdy", "bestFailed", 1, "bestMade", 6));
        assertThat(note(finding, "finding.waiting")).containsEntry("cells", 1);
        assertThat(finding.levels()).extracting(Level::made).containsExactly(6, 6);
        assertThat(finding.levels()).extracting(Level::counted).containsExactly(2, 4);
        assertThat(finding.levels()).extracting(Level::failed).containsExactly(4, 1);
        assertThat(finding.levels().get(0).median()).hasValue(8.5);
    }

    @Test
    void letsEachTeamCountOnceWhenNoTeamTriedTwoLevels() {
        // nine cells look like much; three teams against none leave 3 medians, and 3! orders tell nothing
        SchoolClass own = SchoolClass.empty()
                .sorts("elder", "aaa", 7, 8, 9)
                .sorts("sloe", "bbb", 4, 5, 6)
                .sorts("rose", "ccc", 1, 2, 3);
        ParameterFinding finding = own.finding();
        assertThat(finding.strength()).isEqualTo(Strength.CANNOT_TELL);
        assertThat(finding.entries()).isEqualTo(3);
        assertThat(note(finding, "finding.teamsOnly")).containsEntry("teams", 3);
        assertThat(keys(finding)).contains("finding.oneTeamPerLevel");
    }

    @Test
    void warnsOfLevelsOfOneTeamEvenWhenATeamTriedTwo() {
        ParameterFinding finding = SchoolClass.empty()
                .sorts("elder", "aa", 7, 8)
                .sorts("sloe", "aa", 4, 5)
                .sorts("rose", "bb", 1, 2)
                .finding();
        assertThat(keys(finding)).contains("finding.oneTeamPerLevel").doesNotContain("finding.teamsOnly");
    }

    @Test
    void hasNothingToCompareWithoutTwoLevelsOrThreeCells() {
        assertThat(key(SchoolClass.empty())).isEqualTo("finding.nothingToCompare.noCells");
        assertThat(key(SchoolClass.empty().failed("elder", 3))).isEqualTo("finding.nothingToCompare.noCells");
        assertThat(key(SchoolClass.empty().sorts("elder", "abc", 1, 2, 3).failed("sloe", 3)))
                .isEqualTo("finding.nothingToCompare.oneLevel");
        assertThat(key(SchoolClass.empty().sorts("elder", "a", 1).sorts("sloe", "b", 2)))
                .isEqualTo("finding.nothingToCompare.tooFew");
    }

    @Test
    void leavesOutCellsWithoutTheEntryAndSaysSo() {
        ParameterFinding finding =
                SchoolClass.empty().sorts("elder", "a", 1).failed(null, 2).finding();
        assertThat(note(finding, "finding.notRecorded")).containsEntry("cells", 2);
        assertThat(finding.levels()).hasSize(1);
    }

    @Test
    void cannotTellWhenAllPowersAreEqual() {
        ParameterFinding finding = SchoolClass.empty()
                .sorts("elder", "abc", 2, 2, 2)
                .sorts("sloe", "abc", 2, 2, 2)
                .finding();
        assertThat(finding.strength()).isEqualTo(Strength.CANNOT_TELL);
        assertThat(finding.tests().kruskalWallis()).isEmpty();
    }

    private static String key(SchoolClass cells) {
        return cells.finding().sentence().key();
    }

    private static List<String> keys(ParameterFinding finding) {
        return finding.notes().stream().map(Sentence::key).toList();
    }

    private static Map<String, Object> note(ParameterFinding finding, String key) {
        return finding.notes().stream()
                .filter(note -> note.key().equals(key))
                .map(Sentence::values)
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " not among " + keys(finding)));
    }
}
