package org.berrywatt.server.data;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.platform.Texts;
import org.jspecify.annotations.Nullable;

/**
 * What the tables hold, column by column, as the Data Package and Table Schema specifications of Frictionless Data (v1)
 * lay it out; units and numbers of rows are properties of ours, {@code unit} and {@code rows}.
 */
record DataPackage(String profile, String name, String title, String description, List<TableFile> resources) {

    static final String FILE = "datapackage.json";

    record TableFile(
            String profile,
            String name,
            String path,
            String title,
            String description,
            long rows,
            String format,
            String mediatype,
            String encoding,
            Schema schema) {}

    record Schema(List<Field> fields, List<String> missingValues) {}

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Field(
            String name,
            String type,
            String description,
            @Nullable String unit) {}

    /** The description in the language that is being spoken. */
    static DataPackage of(LabDay day, Tables tables, Texts texts) {
        Map<String, Long> rows = tables.rows(day.id());
        return new DataPackage(
                "tabular-data-package",
                "lab-day-" + day.date(),
                day.title(),
                texts.say("data.package"),
                Tables.NAMES.stream()
                        .map(name -> file(name, rows.getOrDefault(name, 0L), tables, texts))
                        .toList());
    }

    private static TableFile file(String name, long rows, Tables tables, Texts texts) {
        return new TableFile(
                "tabular-data-resource",
                name.replace('_', '-'),
                name + ".csv",
                texts.say("data.title." + name),
                texts.say("data.table." + name),
                rows,
                "csv",
                "text/csv",
                "utf-8",
                new Schema(
                        tables.columns(name).stream()
                                .map(column -> field(column, texts))
                                .toList(),
                        List.of("")));
    }

    private static Field field(Column column, Texts texts) {
        return new Field(
                column.name(),
                column.type().key(),
                texts.say("data.column." + column.name()),
                column.unit().orElse(null));
    }
}
