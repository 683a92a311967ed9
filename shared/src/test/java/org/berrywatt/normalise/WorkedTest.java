package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class WorkedTest {
    private static final JsonNode TEXTS = new ObjectMapper().readTree(Path.of("../frontend/web/texts/en.json"));

    @Test
    void showsEveryStepWithNumbersAndUnits() {
        var sweep = Measured.cell(
                Measured.sweep(100e-6, 0.4, 0.5), Measured.shown(20e-6), Measured.AREA, Measured.sunlight(100));
        assertThat(Normalisation.of(sweep, Measured.REFERENCE).steps())
                .startsWith(
                        new Step("step.effectiveIrradiance", "Geff = G · M", "100.0 W/m² · 1.000", "100.0 W/m²"),
                        new Step("step.photocurrent", "Iph = Isc − Idark", "100.0 µA − 20.00 µA", "80.00 µA"),
                        new Step(
                                "step.currentDensity",
                                "J = Iph / A · Gref / Geff",
                                "80.00 µA / 2.000 cm² · 100.0 W/m² / 100.0 W/m²",
                                "40.00 µA/cm²"))
                .contains(
                        new Step(
                                "step.fillFactor",
                                "FF = Pmax / (Voc · Isc)",
                                "20.00 µW / (400.0 mV · 100.0 µA)",
                                "0.5000"),
                        new Step(
                                "step.powerDensity",
                                "P/A = FF · Vref · J",
                                "0.5000 · 400.0 mV · 40.00 µA/cm²",
                                "8.000 µW/cm²"),
                        new Step(
                                "step.powerAtReferenceArea", "P = P/A · Aref", "8.000 µW/cm² · 4.000 cm²", "32.00 µW"));
    }

    @Test
    void showsTheReadingInLuxWhereTheDisplayDid() {
        var light = EffectiveIrradiance.of(
                Lamp.SUN, Instrument.LUX_METER, DyeFamily.ANTHOCYANIN, Estimate.exact(10_000), true);
        var cell = Measured.in(new LightAtCell(light, "window bench", false));
        assertThat(Normalisation.of(cell, Measured.REFERENCE).steps().get(0))
                .isEqualTo(new Step(
                        "step.effectiveIrradiance",
                        "Geff = E / K · M",
                        "10000 lx / 109.5 lx/(W/m²) · 1.000",
                        "91.36 W/m²"));
    }

    @Test
    void hasATextForEveryStepInputAndNote() {
        var far = Measured.light(Lamp.HALOGEN, 2_000, true);
        var burdened = new SpotReading(Measured.shown(1e-4), Measured.shown(0.4), 1_000, Double.POSITIVE_INFINITY);
        var results = Stream.of(
                Measured.cell(burdened, Measured.shown(1e-6), Measured.AREA, far),
                Measured.cell(Measured.sweep(1e-4, 0.4, 0.4), null, Measured.AREA, Measured.sunlight(150)));
        assertThat(results.map(cell -> Normalisation.of(cell, Measured.REFERENCE))
                        .flatMap(WorkedTest::keys))
                .allMatch(TEXTS::has);
    }

    private static Stream<String> keys(Result result) {
        return Stream.of(
                        result.steps().stream().map(Step::key),
                        result.notes().stream().map(Note::key),
                        result.powerDensityWm2().contributions().stream()
                                .map(contribution -> contribution.input().name()))
                .flatMap(keys -> keys);
    }
}
