package org.berrywatt.server.paper;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * A row as it was typed.
 *
 * @param number line of the file, the first being 1
 * @param values by the keys of their columns; those left empty are missing
 * @param headers the columns' names in this file, by their keys
 */
record PaperRow(String file, int number, Map<String, Typed> values, Map<String, String> headers) {

    /** The words of a column; empty when it was left empty. */
    String text(String column) {
        var value = values.get(column);
        return value == null ? "" : value.text();
    }

    /** @throws Refusal {@code value.missing} */
    String needed(String column) {
        if (text(column).isEmpty()) {
            throw Refusal.of(ProblemCode.VALUE_MISSING).field(column);
        }
        return text(column);
    }

    @Nullable
    String orNull(String column) {
        return text(column).isEmpty() ? null : text(column);
    }

    @Nullable
    Typed number(String column) {
        return values.get(column);
    }

    String header(String column) {
        return headers.getOrDefault(column, column);
    }

    /** All that stands in it, in the columns' own order: the same for the same row in whatever file. */
    String content(List<PaperColumn> columns) {
        return columns.stream()
                .map(column -> values.getOrDefault(column.key(), new Typed("", null)))
                .map(value -> value.text() + "\u001F" + value.unit())
                .collect(Collectors.joining("\u001E"));
    }
}
