package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a table holds, before anything is compared.
 *
 * @param rows lines without the first
 * @param columns in their order
 * @param problems everything that keeps it from being compared, from the top; a hundred at most
 * @param problemCount how many there are
 */
public record FindingsTableAnswer(int rows, List<Column> columns, List<Fault> problems, int problemCount) {

    /**
     * A column.
     *
     * @param use {@code "parameter"}, {@code "outcome"}, {@code "label"}, {@code "team"}, {@code "day"}, or {@code "setAside"} for
     *     one with more different names than can be levels
     * @param kind {@code "number"} or {@code "sort"}
     * @param different how many different values it has
     * @param missing cells without a value
     * @param oddRow line with the first value that is no number, in a column of names most of which are numbers; else null
     */
    public record Column(
            String name,
            String use,
            String kind,
            int different,
            int missing,
            @Nullable Integer oddRow,
            @Nullable String oddValue) {}

    /**
     * Something to mend in the file.
     *
     * @param row line of the file, the first being 1; null for the file as a whole
     * @param column name of the column; null for the line as a whole
     * @param kind what is wrong
     * @param value as it stands there, shortened
     * @param limit what is accepted
     */
    public record Fault(@Nullable Integer row, @Nullable String column, String kind, String value, String limit) {}
}
