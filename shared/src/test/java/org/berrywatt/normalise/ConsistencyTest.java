package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published natural-dye cells; the resource names the paper of each row and whether its numbers agree. */
class ConsistencyTest {
    private static final double AM2_PER_MACM2 = 10;
    private static final double WM2_PER_MWCM2 = 10;
    private static final double PER_PERCENT = 0.01;

    static Stream<CSVRecord> complete() throws IOException {
        return rows().stream().filter(row -> !row.get("flag").equals("incomplete"));
    }

    @ParameterizedTest
    @MethodSource("complete")
    void agreesWithThePublishedNumbersExactlyWhereRoundingExplainsThem(CSVRecord row) {
        assertThat(of(row).agrees())
                .as(row.get("id") + " " + row.get("dye_source"))
                .isEqualTo(row.get("flag").equals("consistent"));
    }

    @ParameterizedTest
    @MethodSource("complete")
    void recomputesTheEfficiency(CSVRecord row) {
        assertThat(of(row).efficiency() / PER_PERCENT)
                .isCloseTo(Double.parseDouble(row.get("efficiency_recomputed_percent")), within(6e-6));
    }

    @Test
    void namesTheLightAtWhichTheNumbersWouldAgree() {
        // Leyrer et al. 2016, abstract: 0.38 mA/cm2, 0.43 V, 0.450 and 0.14 %, which fit at about 52 mW/cm2
        var maqui = Consistency.of(
                new Rounded(3.8, 0.1),
                new Rounded(0.43, 0.01),
                new Rounded(0.45, 0.001),
                new Rounded(1000, 0),
                new Rounded(0.0014, 0.0001));
        assertThat(maqui.agrees()).isFalse();
        assertThat(maqui.fittingIrradianceWm2()).isCloseTo(525, within(1.0));
        assertThat(maqui.ratio()).isCloseTo(0.14 / 0.07353, within(1e-3));
    }

    @Test
    void refusesWhatNoPrintedNumberCanBe() {
        assertThatThrownBy(() -> new Rounded(0, 0.1))
                .isInstanceOf(NormalisationRefused.class)
                .hasMessage("printedValue must lie in (0, ∞), not 0.0");
        assertThatThrownBy(() -> new Rounded(Double.NaN, 0.1)).isInstanceOf(NormalisationRefused.class);
        assertThatThrownBy(() -> new Rounded(1, -1)).isInstanceOf(NormalisationRefused.class);
    }

    private static Consistency of(CSVRecord row) {
        return Consistency.of(
                printed(row, "jsc_mA_per_cm2", AM2_PER_MACM2),
                printed(row, "voc_V", 1),
                printed(row, "fill_factor", 1),
                new Rounded(Double.parseDouble(row.get("irradiance_mW_per_cm2")) * WM2_PER_MWCM2, 0),
                printed(row, "efficiency_percent", PER_PERCENT));
    }

    private static Rounded printed(CSVRecord row, String column, double unit) {
        var number = new BigDecimal(row.get(column));
        return new Rounded(number.doubleValue() * unit, number.ulp().doubleValue() * unit);
    }

    private static List<CSVRecord> rows() throws IOException {
        var stream =
                Objects.requireNonNull(ConsistencyTest.class.getResourceAsStream("/naturaldye/natural_dye_cells.csv"));
        try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        }
    }
}
