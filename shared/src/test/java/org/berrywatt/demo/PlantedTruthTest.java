package org.berrywatt.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.berrywatt.demo.Rows.Row;
import org.berrywatt.findings.Effect;
import org.berrywatt.findings.ParameterFinding;
import org.berrywatt.findings.Sentence;
import org.berrywatt.findings.Strength;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.statistics.Resampling;
import org.berrywatt.statistics.Spearman;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

/**
 * What the class's entries give once they went through the science, held against the truth that the generator planted (see
 * demo-data/README.md).
 */
class PlantedTruthTest {

    private static final Lab LAB = new Lab();
    private static final Rows CELLS = Rows.of("cells");
    private static final StudyFindings FINDINGS = StudyFindings.of(LAB.study(CELLS), Resampling.seeded(1));

    private record Compared(double truthWm2, Estimate found) {}

    @Test
    void ranksCellsAsTheyReallyAre() {
        List<Compared> cells = compared();
        double[] truth = cells.stream().mapToDouble(Compared::truthWm2).toArray();
        double[] found = cells.stream().mapToDouble(cell -> cell.found.value()).toArray();
        assertThat(cells).hasSize(15);
        assertThat(Spearman.of(truth, found).value().orElseThrow().rho()).isGreaterThan(0.95);
    }

    @Test
    void holdsTheTruthWithinTheIntervals() {
        assertThat(compared())
                .allMatch(cell -> cell.found.low() <= cell.truthWm2 && cell.truthWm2 <= cell.found.high());
    }

    @Test
    void seesBatteriesSettleAndOneThatNeverDoes() {
        assertThat(LAB.classes(cell("L2")))
                .containsExactly(SolarClass.GALVANIC, SolarClass.MIXED, SolarClass.PHOTOVOLTAIC);
        assertThat(LAB.classes(cell("N3"))).hasSize(3).containsOnly(SolarClass.GALVANIC);
        assertThat(LAB.classes(cell("N2"))).containsExactly(SolarClass.NO_RESPONSE);
    }

    @Test
    void findsThatHotterBakesGaveMorePowerAndLostFewerCells() {
        ParameterFinding bake = about("bakeTemperature");
        assertThat(bake.sentence().key()).isEqualTo("finding.clear.rise");
        assertThat(bake.notes().get(0).values())
                .containsEntry("worstLevel", "350")
                .containsEntry("worstFailed", 5);
    }

    @Test
    void findsTheDyeOnceTheBakeIsAllowedFor() {
        ParameterFinding dye = about("dyeSource");
        assertThat(dye.strength()).isIn(Strength.SUGGESTIVE, Strength.CLEAR);
        assertThat(dye.sentence().values()).containsEntry("bestLevel", "elderberry");
    }

    @Test
    void givesConfoundedParametersTheSameTest() {
        assertThat(about("counterElectrode").tests().kruskalWallis())
                .isEqualTo(about("tapeLayers").tests().kruskalWallis());
    }

    @Test
    void namesThePlantedConfounding() {
        assertThat(about("tapeLayers").strength()).isEqualTo(Strength.CONFOUNDED);
        assertThat(about("tapeLayers").confoundedWith()).contains("counterElectrode");
        assertThat(about("counterElectrode").confoundedWith()).contains("tapeLayers");
        assertThat(FINDINGS.confounding().aliasSets()).contains(List.of("counterElectrode", "tapeLayers"));
    }

    @Test
    void holdsTheTrueRatioOfTheBakeWithinItsInterval() {
        // photocurrent 0.30 at 350 and 1.25 at 500 degrees: demo-data/README.md
        Effect bake = about("bakeTemperature").effect().orElseThrow();
        assertThat(bake.low()).isLessThan(1.25 / 0.30);
        assertThat(bake.high()).isGreaterThan(1.25 / 0.30);
    }

    @Test
    void cannotTellWhereNothingWasPlanted() {
        assertThat(about("soakTime").strength()).isEqualTo(Strength.CANNOT_TELL);
        ParameterFinding oxide = about("oxideSource");
        assertThat(oxide.strength()).isEqualTo(Strength.CANNOT_TELL);
        assertThat(oxide.notes()).extracting(Sentence::key).contains("finding.teamsOnly");
        assertThat(about("electrolyte").strength()).isEqualTo(Strength.NOTHING_TO_COMPARE);
    }

    private static List<Compared> compared() {
        return CELLS.rows().stream()
                .flatMap(cell -> LAB.powerWm2(cell).map(found -> new Compared(truthWm2(cell), found)).stream())
                .toList();
    }

    private static double truthWm2(Row cell) {
        return Rows.of("truth")
                .where("label", cell.text("label"))
                .mapToDouble(row -> Double.parseDouble(row.text("power_density_at_50_W_m2_uW_cm2")) / 100)
                .findFirst()
                .orElseThrow();
    }

    private static Row cell(String label) {
        return CELLS.where("label", label).findFirst().orElseThrow();
    }

    private static ParameterFinding about(String parameter) {
        return FINDINGS.about(parameter).orElseThrow();
    }
}
