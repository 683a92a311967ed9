package org.berrywatt.validation;

import java.util.List;
import java.util.stream.Stream;

/** A table of the validation report under its heading. */
record Section(String heading, String remark, List<Row> rows) {

    /** Rows that ought to hold and do not. */
    Stream<Row> broken() {
        return rows.stream().filter(Row::isBroken);
    }

    List<String> lines() {
        var head = Stream.of(
                "## " + heading,
                "",
                remark,
                "",
                "| what | measured against | wanted | found | holds |",
                "|---|---|---|---|---|");
        return Stream.concat(head, Stream.concat(rows.stream().map(Section::line), Stream.of("")))
                .toList();
    }

    private static String line(Row row) {
        return "| " + row.what() + " | " + row.source() + " | " + row.wanted() + " | " + row.found() + " | "
                + verdict(row) + " |";
    }

    private static String verdict(Row row) {
        if (row.holds()) {
            return "yes";
        }
        return row.knownMiss() == null ? "**no**" : "**no**: " + row.knownMiss();
    }
}
