package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published natural-dye cells; the resource names paper and provenance of each row. */
class PublishedCellsTest {
    private static final String QUOTED = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    record Published(
            String id, double jscMaPerCm2, double vocV, double fillFactor, double irradianceMwPerCm2, double percent) {}

    static Stream<Published> cells() throws IOException {
        var stream = Objects.requireNonNull(
                PublishedCellsTest.class.getResourceAsStream("/naturaldye/natural_dye_cells.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("id,"))
                    .map(line -> line.split(QUOTED, -1))
                    .filter(row -> !row[9].isEmpty())
                    .map(PublishedCellsTest::published)
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cells")
    void reproducesTheEfficiencyOfAPublishedCell(Published published) {
        var irradianceWm2 = 10 * published.irradianceMwPerCm2();
        var areaM2 = 1e-4;
        var cell = Measured.cell(
                Measured.sweep(published.jscMaPerCm2() * 1e-3, published.vocV(), published.fillFactor()),
                null,
                Estimate.exact(areaM2),
                Measured.sunlight(irradianceWm2));
        var result = Normalisation.of(cell, new Reference(irradianceWm2, areaM2));
        var percent = 100 * result.powerDensityWm2().value() / irradianceWm2;
        assertThat(percent).isCloseTo(published.percent(), within(6e-6 + 1e-9 * percent));
    }

    private static Published published(String[] row) {
        return new Published(
                row[0],
                Double.parseDouble(row[3]),
                Double.parseDouble(row[4]),
                Double.parseDouble(row[5]),
                Double.parseDouble(row[7]),
                Double.parseDouble(row[9]));
    }
}
