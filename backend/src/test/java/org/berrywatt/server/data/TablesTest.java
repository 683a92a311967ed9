package org.berrywatt.server.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Texts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class TablesTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Tables tables;

    @Autowired
    private Texts texts;

    private Rehearsal day;

    @BeforeEach
    void playADay() {
        day = new Rehearsal(server);
        var yard = day.sunnyStation("Yard");
        day.light(yard, "800 W/m2");
        var temperature = new BuildValue("bakeTemperature", "450", "degC");
        var cell = day.cell(day.team("=Larch"), "K1", "15 x 15 mm", temperature);
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "0.800 mA");
        day.sweep(cell, yard, new String[][] {
            {"100 ohm", "60 mV"},
            {"500 ohm", "240 mV"},
            {"1 kohm", "330 mV"},
            {"5 kohm", "390 mV"},
            {"10 kohm", "400 mV"}
        });
        day.failure(day.cell(day.team("Rowan"), "R1", null), "bake", "glassCracked");
    }

    /** 15 mm x 15 mm is 2.25 cm2, by hand. */
    @Test
    void saysAreasInSquareCentimetres() throws IOException {
        assertThat(Double.parseDouble(only("cells", "cell", "K1").get("area_cm2")))
                .isEqualTo(2.25);
    }

    @Test
    void keepsWhatWasTypedBesideItsValue() throws IOException {
        CSVRecord lit = only("readings", "kind", "light");
        assertThat(lit.get("voltage_v")).isEqualTo("0.4");
        assertThat(lit.get("voltage_as_typed")).isEqualTo("400 mV");
        assertThat(lit.get("valid")).isEqualTo("true");
        assertThat(lit.get("accepted_at")).isEqualTo("2026-05-05T12:00:00Z");
    }

    @Test
    void givesEveryPointOfASweepItsRow() throws IOException {
        assertThat(rows("sweep_points"))
                .hasSize(5)
                .first()
                .satisfies(row -> assertThat(row.get("row")).isEqualTo("1"))
                .satisfies(row -> assertThat(row.get("load_ohm")).isEqualTo("100"));
    }

    @Test
    void countsFailuresAmongTheStages() throws IOException {
        assertThat(rows("stages")).extracting(row -> row.get("failure")).containsExactly("glassCracked");
    }

    @Test
    void givesResultsWithTheirIntervals() throws IOException {
        CSVRecord counting = only("results", "standing", "counts");
        double value = Double.parseDouble(counting.get("power_density_w_m2"));
        assertThat(value)
                .isBetween(
                        Double.parseDouble(counting.get("power_density_low_w_m2")),
                        Double.parseDouble(counting.get("power_density_high_w_m2")));
    }

    /** OWASP, CSV Injection: fields that begin with = + - @ tab or carriage return. */
    @Test
    void letsNoNameBecomeAFormula() throws IOException {
        assertThat(rows("teams")).extracting(row -> row.get("team")).contains("'=Larch", "Rowan");
    }

    /** RFC 4180 ends lines with CR LF. */
    @Test
    void endsLinesAsTheStandardSays() throws IOException {
        assertThat(text("teams")).endsWith("\r\n").startsWith("team_id,team,");
    }

    /** The byte order mark of UTF-8 is U+FEFF (RFC 3629, section 6). */
    @Test
    void opensInASpreadsheetThatWritesCommas() throws IOException {
        assertThat(text("cells", Layout.of(true, true)))
                .startsWith("\uFEFFcell_id;")
                .contains(";2,25;");
        assertThat(text("cells", Layout.of(true, false)))
                .startsWith("\uFEFFcell_id,")
                .contains(",2.25,");
    }

    @Test
    void countsTheRowsOfEveryTable() throws IOException {
        for (String table : Tables.NAMES) {
            assertThat(tables.rows(day.labDayId)).as(table).containsEntry(table, (long)
                    rows(table).size());
        }
    }

    @Test
    void describesEveryColumn() {
        var described = DataPackage.of(tables.day(day.labDayId), tables, texts);
        assertThat(described.resources()).hasSize(Tables.NAMES.size());
        assertThat(described.resources())
                .allSatisfy(table -> assertThat(table.title()).doesNotStartWith("data."))
                .allSatisfy(table -> assertThat(table.description()).doesNotStartWith("data."))
                .allSatisfy(table -> assertThat(table.schema().fields())
                        .extracting(DataPackage.Field::description)
                        .noneMatch(words -> words.startsWith("data.")));
    }

    @Test
    void namesTheUnitOfAColumn() {
        assertThat(new Column("power_density_low_w_m2", ColumnType.NUMBER).unit())
                .contains("W/m2");
        assertThat(new Column("current_density_a_m2", ColumnType.NUMBER).unit()).contains("A/m2");
        assertThat(new Column("voltage_v", ColumnType.NUMBER).unit()).contains("V");
        assertThat(new Column("fill_factor", ColumnType.NUMBER).unit()).isEmpty();
    }

    private CSVRecord only(String table, String column, String value) throws IOException {
        var found = rows(table).stream()
                .filter(row -> row.get(column).equals(value))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private List<CSVRecord> rows(String table) throws IOException {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(new StringReader(text(table)))) {
            return parser.getRecords();
        }
    }

    private String text(String table) throws IOException {
        return text(table, Layout.PLAIN);
    }

    private String text(String table, Layout layout) throws IOException {
        var out = new StringWriter();
        tables.write(table, day.labDayId, layout, out);
        return out.toString();
    }
}
