package org.berrywatt.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.Stage;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.TypedArea;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding.Understood;
import org.berrywatt.reading.Fields;
import org.berrywatt.reading.Plausibility;
import org.berrywatt.reading.Verdict;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DemoDayTest {

    private static final Path FOLDER = Path.of("../demo-data");

    @TestFactory
    Stream<DynamicTest> committedFileIsWhatTheSeedGives() {
        return DemoDay.sheets().stream()
                .map(sheet -> DynamicTest.dynamicTest(
                        sheet.file(),
                        () -> assertThat(Files.readString(FOLDER.resolve(sheet.file())))
                                .isEqualTo(sheet.text())));
    }

    @Test
    void givesEveryEntryAnIdOfItsOwn() {
        List<String> ids = Stream.of(
                        "labday",
                        "teams",
                        "stations",
                        "irradiances",
                        "control-cell",
                        "sign-offs",
                        "incidents",
                        "plan",
                        "plan-changes",
                        "planned-cells",
                        "cells",
                        "outcomes",
                        "readings")
                .flatMap(file -> Rows.of(file).column("id"))
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void refersOnlyToWhatIsThere() {
        Set<String> cells = Rows.of("cells").column("id").collect(Collectors.toSet());
        Set<String> stations = Rows.of("stations").column("id").collect(Collectors.toSet());
        Set<String> readings = Rows.of("readings").column("id").collect(Collectors.toSet());
        assertThat(Rows.of("readings").column("cell_id")).isSubsetOf(cells);
        assertThat(Rows.of("outcomes").column("cell_id")).isSubsetOf(cells);
        assertThat(Rows.of("control-cell").column("cell_id")).hasSize(1).isSubsetOf(cells);
        assertThat(Rows.of("recipe").column("cell_id")).isSubsetOf(cells);
        assertThat(Rows.of("planned-cells").column("cell_id")).containsExactlyInAnyOrderElementsOf(cells);
        assertThat(Rows.of("irradiances").column("station_id")).isSubsetOf(stations);
        assertThat(Rows.of("readings").column("replaces").filter(id -> !id.isEmpty()))
                .isSubsetOf(readings);
        assertThat(Rows.of("sweep-points").column("reading_id")).isSubsetOf(readings);
    }

    @Test
    void keepsEachFileInOrderOfTime() {
        assertThat(Stream.of(
                        "teams",
                        "stations",
                        "irradiances",
                        "sign-offs",
                        "incidents",
                        "plan-changes",
                        "planned-cells",
                        "cells",
                        "outcomes",
                        "readings"))
                .allSatisfy(
                        file -> assertThat(Rows.of(file).column("at").toList()).isSorted());
    }

    @Test
    void usesKeysOfTheCatalogues() {
        assertThat(Rows.of("stations").column("lamp"))
                .isSubsetOf(Stream.of(Lamp.values()).map(Lamp::key).toList());
        assertThat(Rows.of("stations").column("instrument"))
                .isSubsetOf(Stream.of(Instrument.values()).map(Instrument::key).toList());
        Rows.of("recipe")
                .each(row -> assertThat(fits(row.text("parameter"), row.text("text"), row.text("unit")))
                        .as("%s", row)
                        .isTrue());
        Rows.of("outcomes")
                .each(row -> assertThat(
                                Stage.of(row.text("stage")).orElseThrow().failures())
                        .as("%s", row)
                        .anyMatch(kind ->
                                row.text("failure").isEmpty() || kind.key().equals(row.text("failure"))));
    }

    @Test
    void typesOnlyNumbersThatAreUsualOrConfirmed() {
        assertThat(Rows.of("readings").where("unusual_confirmed", "false"))
                .allMatch(row -> usual(Fields.VOLTAGE, row.text("voltage")))
                .allMatch(row -> usual(Fields.CURRENT, row.text("current")));
        assertThat(Rows.of("sweep-points").column("load")).allMatch(text -> usual(Fields.LOAD, text));
        assertThat(Rows.of("sweep-points").column("voltage")).allMatch(text -> usual(Fields.VOLTAGE, text));
        assertThat(Rows.of("irradiances").column("reading"))
                .allMatch(text -> usual(text.endsWith("lx") ? Fields.ILLUMINANCE : Fields.IRRADIANCE, text));
        assertThat(Rows.of("cells").column("area"))
                .allMatch(text -> TypedArea.read(text, null) instanceof Understood<?>);
    }

    private static boolean fits(String parameter, String text, String unit) {
        return BuildCatalogue.of(parameter)
                .map(known ->
                        known.field() == null ? known.levelKeys().contains(text) : usual(known.field(), text, unit))
                .orElseGet(() -> fail("no parameter " + parameter));
    }

    /** Fine by the field's ranges, its unit inside the text; or nothing typed. */
    private static boolean usual(Field field, String text) {
        return text.isEmpty() || usual(field, text, null);
    }

    private static boolean usual(Field field, String text, @Nullable String unit) {
        return TypedNumber.read(text, unit, Set.of(field.quantity())) instanceof Understood<Amount> read
                && Plausibility.judge(field, read.meaning()).verdict() == Verdict.FINE;
    }
}
