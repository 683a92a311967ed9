package org.berrywatt.safety;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Codes and limits as usual in the EU (Regulation (EC) No 1272/2008); from memory unless said otherwise. */
class HazardTest {

    @ParameterizedTest
    @CsvSource({
        "NITRIC_ACID, H272 H290 H314 H331 EUH071",
        "SODIUM_HYDROXIDE, H290 H314",
        "ACETIC_ACID, H226 H314",
        "ALCOHOL, H225 H319 H336",
        "IODINE_CRYSTALS, H312 H332 H315 H319 H335 H372 H400",
        "ETHYLENE_GLYCOL, H302 H373",
        "ZINC_OXIDE, H410"
    })
    void carriesTheUsualCodes(Hazard hazard, String codes) {
        assertThat(hazard.codes()).containsExactlyInAnyOrder(codes.split(" "));
    }

    /** The EU's label was annulled, confirmed by the Court of Justice on 1 August 2025 (read in an official summary). */
    @Test
    void labelsTitaniaNoLonger() {
        assertThat(Hazard.TITANIA_POWDER.codes()).isEmpty();
    }

    /** Specific concentration limits: nitric acid 5 and 1 %, acetic acid 25 and 10 %, sodium hydroxide 2 and 0.5 %. */
    @ParameterizedTest
    @CsvSource({"NITRIC_ACID, 5, 1", "ACETIC_ACID, 25, 10", "SODIUM_HYDROXIDE, 2, 0.5"})
    void labelsSolutionsByTheirStrength(Hazard hazard, double corrosive, double irritant) {
        assertThat(hazard.strengths()).extracting(Strength::fromMassPercent).containsExactly(corrosive, irritant);
        assertThat(hazard.strengths().get(0).codes()).containsExactly("H314");
        assertThat(hazard.strengths().get(1).codes()).containsExactly("H315", "H319");
    }

    /** Molar masses and densities at 20 °C: CRC Handbook of Chemistry and Physics, from memory. */
    @ParameterizedTest
    @CsvSource({
        "NITRIC_ACID, 0, 63.01, 1.026",
        "NITRIC_ACID, 1, 63.01, 1.004",
        "ACETIC_ACID, 0, 60.05, 1.033",
        "ACETIC_ACID, 1, 60.05, 1.012",
        "SODIUM_HYDROXIDE, 0, 40.00, 1.021",
        "SODIUM_HYDROXIDE, 1, 40.00, 1.004"
    })
    void givesEachLimitInMolesPerLitre(Hazard hazard, int place, double molarMassGPerMol, double densityGPerMl) {
        var limit = hazard.strengths().get(place);
        double molPerL = limit.fromMassPercent() / 100 * densityGPerMl * 1000 / molarMassGPerMol;
        assertThat(limit.fromMolPerL() / molPerL).isCloseTo(1, within(0.025));
    }

    /**
     * Flash points some 13 °C (ethanol) and 12 °C (isopropanol), self-ignition some 363 and 400 °C (from memory), against
     * films at 450 °C (Smestad and Grätzel, J. Chem. Educ. 75, 752, 1998; from memory); acetic acid 39 °C (read in an
     * extract).
     */
    @Test
    void knowsWhatLightsBelowTheTemperatureOfThePlate() {
        assertThat(Hazard.ALCOHOL.flashPointC()).isEqualTo(Math.min(12, 13));
        assertThat(requireNonNull(Hazard.ALCOHOL.selfIgnitionC()))
                .isEqualTo(Math.min(363, 400))
                .isLessThan(450);
        assertThat(Hazard.ACETIC_ACID.flashPointC()).isEqualTo(39);
    }

    @Test
    void leavesTheDangerousPartsToTheTeacher() {
        assertThat(Arrays.stream(Hazard.values()).filter(Hazard::adultPart))
                .contains(
                        Hazard.IODINE_CRYSTALS,
                        Hazard.NITRIC_ACID,
                        Hazard.ACETIC_ACID,
                        Hazard.SODIUM_HYDROXIDE,
                        Hazard.TITANIA_POWDER,
                        Hazard.HOT_PLATE,
                        Hazard.UV_TORCH)
                .doesNotContain(Hazard.GLASS_EDGES, Hazard.PLANTS);
    }

    @ParameterizedTest
    @EnumSource
    void briefsOnEveryZoneAndFillsItWithAHazard(Zone zone) {
        assertThat(zone.points()).hasSizeBetween(2, 5).doesNotHaveDuplicates();
        assertThat(Hazard.values()).anyMatch(hazard -> hazard.zone() == zone);
        assertThat(Zone.of(zone.key())).contains(zone);
    }

    @Test
    void gatesHeatFlameAndCorrosivesOnly() {
        assertThat(Zone.values()).filteredOn(Zone::gated).containsExactly(Zone.HEAT, Zone.FLAME, Zone.CORROSIVES);
        assertThat(Zone.of("picnic")).isEmpty();
    }
}
