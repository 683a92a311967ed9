package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PlanFiguresTest {

    private static final Wish TWICE = new Wish(2, Wish.USUAL_SPREAD);

    /** The half fraction of a 2^3: A is mixed up wholly with B and C acting together (Montgomery, chapter 8). */
    @Test
    void tellsTheAliasesOfTheHalfFraction() throws IOException {
        var figures = PlanFigures.of(PublishedDesign.array("l4"), TWICE);

        assertThat(figures.factors().get(0).aliases()).singleElement().satisfies(alias -> {
            assertThat(alias.with()).containsExactly("B", "C");
            assertThat(alias.whole()).isTrue();
        });
    }

    /**
     * In the Plackett-Burman design of 12 runs every main effect is mixed up with every pair of the others by one third
     * (Montgomery, chapter 8; C. F. J. Wu and M. Hamada, Experiments, 2000, chapter 8).
     */
    @Test
    void tellsThePartialAliasesOfPlackettAndBurman() throws IOException {
        var figures = PlanFigures.of(PublishedDesign.array("pb12"), TWICE);

        assertThat(figures.factors())
                .allSatisfy(factor -> assertThat(factor.aliases()).hasSize(45).allSatisfy(alias -> {
                    assertThat(alias.with()).hasSize(2);
                    assertThat(alias.correlation()).isCloseTo(1 / 3.0, within(1e-9));
                }));
    }

    /**
     * Eight pairs of standard deviation 0.5 each: a paired t test finds a difference of 0.81744 four times in five (SciPy
     * 1.17.1, scipy.stats.nct on 7 degrees of freedom, computed for this test).
     */
    @Test
    void seesInEightPairsWhatAPairedTestSees() {
        var figures = PlanFigures.of(teams(8, 0, 1), TWICE).factors().get(0);

        assertThat(figures.smallestRatio()).isCloseTo(Math.exp(0.81744), within(1e-4));
    }

    /** Four against four of standard deviation 0.7: a difference of 1.66653, found as above on 6 degrees of freedom. */
    @Test
    void seesInFourAgainstFourWhatATwoSampleTestSees() {
        var runs =
                IntStream.range(0, 8).mapToObj(i -> new Run(0, List.of(i % 2))).toList();
        var design = new Design(List.of(PublishedDesign.factor("A", 2)), runs);

        var figures =
                PlanFigures.of(design, new Wish(2, Math.exp(0.7))).factors().get(0);

        assertThat(figures.smallestRatio()).isCloseTo(Math.exp(1.66653), within(1e-3));
    }

    @Test
    void tellsNothingWhenEachTeamKeepsToOneLevel() {
        var runs = IntStream.range(0, 24)
                .mapToObj(i -> new Run(i / 3, List.of(i / 3 % 2)))
                .toList();

        var figures = PlanFigures.of(new Design(List.of(PublishedDesign.factor("A", 2)), runs), TWICE);

        assertThat(figures.efficiency()).isZero();
        assertThat(figures.factors().get(0).power()).isNull();
        assertThat(figures.factors().get(0).aliases().get(0).with()).isEmpty();
        assertThat(keys(figures)).containsExactly("plan.says.teamsOnly");
    }

    @Test
    void namesTheOtherFactorThatAlwaysChangesAlong() {
        var runs = IntStream.range(0, 16)
                .mapToObj(i -> new Run(i / 2, List.of(i % 2, i % 2)))
                .toList();
        var factors = List.of(PublishedDesign.factor("A", 2), PublishedDesign.factor("B", 2));

        var statements = Statements.of(PlanFigures.of(new Design(factors, runs), TWICE), TWICE);

        assertThat(statements.get(0).key()).isEqualTo("plan.says.mixed");
        assertThat(statements.get(0).values()).containsEntry("factor", "A").containsEntry("other", "B");
    }

    /** Pairs of 10 teams find twice as much in 78.75 % of cases, of 11 in 83.34 % (SciPy as above). */
    @Test
    void saysHowManyMoreCellsOrTeamsAnAnswerNeeds() {
        var figures = PlanFigures.of(teams(8, 0, 1), TWICE).factors().get(0);

        assertThat(figures.answers()).isFalse();
        assertThat(figures.cellsPerTeamNeeded()).isEqualTo(3);
        assertThat(figures.teamsNeeded()).isEqualTo(11);
        assertThat(PlanFigures.of(teams(10, 0, 1), TWICE).factors().get(0).power())
                .isCloseTo(0.787522, within(1e-4));
        assertThat(PlanFigures.of(teams(11, 0, 1), TWICE).factors().get(0).power())
                .isCloseTo(0.833362, within(1e-4));
    }

    @Test
    void followsAChangeByHand() {
        var balanced = teams(8, 0, 1);

        var changed = PlanFigures.of(balanced.with(0, 0, 1), TWICE);

        assertThat(changed.factors().get(0).counts()).containsExactly(7, 9);
        assertThat(changed.factors().get(0).teamsComparing()).isEqualTo(7);
        assertThat(changed.efficiency())
                .isLessThan(PlanFigures.of(balanced, TWICE).efficiency());
        assertThat(keys(changed)).contains("plan.says.unbalanced");
    }

    @Test
    void saysThatNoCellIsLeftToTellChance() {
        assertThat(keys(PlanFigures.of(teams(1, 0, 1), TWICE)))
                .containsExactly("plan.says.noSpare", "plan.says.oneTeam");
    }

    private static Stream<String> keys(PlanFigures figures) {
        return Statements.of(figures, TWICE).stream().map(Statement::key);
    }

    private static Design teams(int teams, Integer... levels) {
        var runs = IntStream.range(0, teams)
                .boxed()
                .flatMap(team -> Stream.of(levels).map(level -> new Run(team, List.of(level))))
                .toList();
        return new Design(List.of(PublishedDesign.factor("A", 2)), runs);
    }
}
