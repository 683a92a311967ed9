package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.berrywatt.findings.Confounding.Pair;
import org.berrywatt.findings.JointModel.Term;
import org.junit.jupiter.api.Test;

class StudyFindingsTest {

    @Test
    void tellsTwoParametersApartThatEveryTeamCrossed() {
        StudyFindings found = SchoolClass.factorial(
                        6,
                        Map.of("dye", List.of("elder", "sloe"), "tape", List.of("one", "two")),
                        Map.of("elder", 3.0),
                        5)
                .findings();
        assertThat(strength(found, "dye")).isEqualTo(Strength.CLEAR);
        assertThat(strength(found, "tape")).isEqualTo(Strength.CANNOT_TELL);
        Term dye = found.joint().orElseThrow().term("dye").orElseThrow();
        assertThat(dye.p()).isLessThan(0.005);
        // a crossed design leaves parameters unwidened: every table of counts is even
        assertThat(dye.inflation().orElseThrow()).isCloseTo(1, within(1e-12));
        assertThat(dye.degreesWithin()).isEqualTo(24 - 6 - 2);
        assertThat(found.confounding().pairs().get(0).cramersV()).isZero();
        Effect effect = found.about("dye").orElseThrow().effect().orElseThrow().upwards();
        assertThat(effect.low()).isLessThan(3);
        assertThat(effect.high()).isGreaterThan(3);
    }

    @Test
    void callsParametersThatAlwaysChangedTogetherConfoundedWithEachOther() {
        StudyFindings found = together(3.0);
        assertThat(found.parameters()).extracting(ParameterFinding::strength).containsOnly(Strength.CONFOUNDED);
        ParameterFinding tape = found.about("tape").orElseThrow();
        assertThat(tape.confoundedWith()).contains("soot");
        assertThat(tape.sentence().key()).isEqualTo("finding.confounded.seen");
        assertThat(found.confounding().aliasSets()).containsExactly(List.of("soot", "tape"));
        assertThat(found.next()).extracting(Sentence::key).contains("finding.next.apart");
        assertThat(found.next().get(0).values())
                .containsEntry("firstLevel", "black")
                .containsEntry("secondLevel", "two");
        assertThat(found.joint().orElseThrow().left()).hasSize(1);
    }

    @Test
    void saysSoEvenWhereNoDifferenceIsSeen() {
        ParameterFinding tape = together(1.0).about("tape").orElseThrow();
        assertThat(tape.sentence().key()).isEqualTo("finding.confounded.unseen");
    }

    private static StudyFindings together(double ratio) {
        SchoolClass cells = SchoolClass.empty();
        for (int team = 0; team < 8; team++) {
            double good = 1 + team % 3;
            cells.cell("t" + team, good * (1 + 0.01 * team), Map.of("tape", "one", "soot", "black"));
            cells.cell("t" + team, good * ratio * (1.1 - 0.03 * team), Map.of("tape", "two", "soot", "grey"));
        }
        return cells.findings();
    }

    @Test
    void seesThatANestedParameterHidesOnlyTheOneInsideIt() {
        // each of four dyes was made with one acid only, but each acid with two dyes
        SchoolClass cells = SchoolClass.empty();
        List<String> dyes = List.of("elder", "sloe", "haw", "onion");
        for (int i = 0; i < 16; i++) {
            cells.cell("t" + i % 3, 1 + i, Map.of("dye", dyes.get(i % 4), "acid", i % 4 < 2 ? "vinegar" : "citric"));
        }
        StudyFindings found = cells.findings();
        Pair pair = found.confounding().pairs().get(0);
        assertThat(pair.first()).isEqualTo("acid");
        assertThat(pair.firstTold()).isZero();
        assertThat(pair.secondTold()).isEqualTo(2);
        assertThat(strength(found, "acid")).isEqualTo(Strength.CONFOUNDED);
        assertThat(strength(found, "dye")).isNotEqualTo(Strength.CONFOUNDED);
    }

    @Test
    void isNotFooledBySurvivors() {
        // the fragile recipe breaks six of eight; its two survivors are the best cells of the day
        SchoolClass cells = SchoolClass.empty().sorts("fragile", "ab", 20, 22);
        for (String team : List.of("c", "d", "e", "f", "g", "h")) {
            cells.add(new Subject(team, team, "day", Standing.FAILED, null), Map.of("it", "fragile"));
        }
        cells.sorts("sturdy", "abcdefgh", 10, 10.5, 11, 11.5, 12, 12.5, 13, 13.5);
        ParameterFinding finding = cells.finding();
        assertThat(finding.strength()).isNotEqualTo(Strength.CLEAR);
        assertThat(finding.notes()).extracting(Sentence::key).contains("finding.survivors");
        assertThat(finding.yieldStrength()).isIn(Strength.CLEAR, Strength.SUGGESTIVE);
    }

    @Test
    void saysThatAFindingHangsOnEverySingleCell() {
        // 2 of 5! orders: p = 0.0167; without any one cell 2 of 4!: 0.083
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 5; i++) {
            cells.number(i, "a", i + 1);
        }
        ParameterFinding finding = cells.finding();
        assertThat(finding.strength()).isEqualTo(Strength.SUGGESTIVE);
        assertThat(finding.notes()).extracting(Sentence::key).contains("finding.hangsOnMany");
    }

    @Test
    void givesEveryOddClassASentenceAndNoMeaninglessProbability() {
        List<SchoolClass> odd = List.of(
                SchoolClass.empty(),
                SchoolClass.empty().failed("a", 5).failed("b", 3),
                SchoolClass.empty().waiting("a", 4),
                SchoolClass.empty().sorts("a", "xyz", 1, 2, 3),
                SchoolClass.empty().sorts("a", "xyz", 2, 2, 2).sorts("b", "xyz", 2, 2, 2),
                SchoolClass.empty().sorts("a", "xyz", 0, 0, 0).sorts("b", "xyz", 0, 0, 1),
                SchoolClass.empty().sorts("a", "x", 1).sorts("b", "y", 2).sorts("c", "z", 3),
                SchoolClass.empty().sorts("a", "xxx", 1, 2, 3).sorts("b", "xxx", 4, 5, 6),
                SchoolClass.empty().sorts("a", "xyz", 1, 2, 3).failed(null, 9),
                manyLevels());
        for (SchoolClass cells : odd) {
            ParameterFinding finding = cells.finding();
            assertThat(finding.sentence().key()).startsWith("finding.");
            assertThat(finding.p()).isGreaterThan(0).isLessThanOrEqualTo(1);
        }
    }

    private static SchoolClass manyLevels() {
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 200; i++) {
            cells.sorts("level" + i, "a", 1 + i % 17);
        }
        return cells;
    }

    private static Strength strength(StudyFindings found, String parameter) {
        return found.about(parameter).orElseThrow().strength();
    }

    /** Thickness is measured anew for every cell: its levels are no groups, so the yield is asked whether it rises. */
    @Test
    void asksNumbersThatHardlyTwoCellsShareWhetherTheYieldRises() {
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 600; i++) {
            String team = "t" + i / 3;
            Subject subject = i % 5 == 0
                    ? new Subject("c" + i, team, "day", Standing.FAILED, null)
                    : new Subject("c" + i, team, "day", Standing.COUNTS, 1.0 + i % 7);
            cells.add(subject, Map.of("it", 1 + i * 0.137));
        }

        ParameterFinding found = cells.finding();

        assertThat(found.tests().yield().orElseThrow().degreesOfFreedom()).isEqualTo(1);
        assertThat(found.tests().difference()).isEmpty();
    }
}
