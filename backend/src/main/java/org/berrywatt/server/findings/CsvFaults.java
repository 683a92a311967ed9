package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.berrywatt.contract.FindingsTableAnswer.Fault;
import org.berrywatt.server.findings.CsvLines.Line;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Everything in a file that keeps it from being compared. */
final class CsvFaults {

    static final int MOST_ROWS = 100_000;
    static final int MOST_COLUMNS = 30;
    private static final int FEWEST_ROWS = 3;
    private static final int MOST_CHARACTERS = 60;
    private static final int MOST_TOLD = 100;

    private final List<Fault> first = new ArrayList<>();
    private int count;

    CsvFaults(CsvLines file, List<String> names, List<Line> rows) {
        if (file.openQuote() > 0) {
            tell(file.openQuote(), null, "openQuote", "\"", "");
        }
        checkSize(names, rows);
        checkNames(names, file.lines().isEmpty() ? 1 : file.lines().get(0).number());
        if (none()) {
            rows.forEach(row -> checkRow(row, names));
        }
    }

    private void checkSize(List<String> names, List<Line> rows) {
        if (rows.size() < FEWEST_ROWS || rows.size() > MOST_ROWS) {
            tell(null, null, "rows", String.valueOf(rows.size()), "[" + FEWEST_ROWS + ", " + MOST_ROWS + "]");
        }
        if (names.size() < 2 || names.size() > MOST_COLUMNS) {
            tell(null, null, "columns", String.valueOf(names.size()), "[2, " + MOST_COLUMNS + "]");
        }
    }

    private void checkNames(List<String> names, int number) {
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).isEmpty()) {
                tell(number, null, "nameMissing", String.valueOf(i + 1), "");
            }
        }
        names.stream()
                .filter(name -> !name.isEmpty() && Collections.frequency(names, name) > 1)
                .distinct()
                .forEach(name -> tell(number, null, "nameTwice", name, ""));
        names.forEach(name -> checkText(number, name, name));
    }

    private void checkRow(Line row, List<String> names) {
        if (row.values().size() > names.size()) {
            var extra = row.values().subList(names.size(), row.values().size());
            extra.stream()
                    .filter(value -> !value.isEmpty())
                    .findFirst()
                    .ifPresent(value -> tell(row.number(), null, "tooManyValues", value, "[1, " + names.size() + "]"));
        }
        for (int i = 0; i < Math.min(names.size(), row.values().size()); i++) {
            checkText(row.number(), names.get(i), row.values().get(i));
        }
    }

    private void checkText(int row, String column, String value) {
        if (value.length() > MOST_CHARACTERS && value.codePointCount(0, value.length()) > MOST_CHARACTERS) {
            tell(row, column, "tooLong", value, "[0, " + MOST_CHARACTERS + "]");
        } else if (Words.isUnfit(value)) {
            tell(row, column, "unfit", value, "");
        }
    }

    void add(Line row, String column, String kind, String value, String limit) {
        tell(row.number(), column, kind, value, limit);
    }

    private void tell(@Nullable Integer row, @Nullable String column, String kind, String value, String limit) {
        count++;
        if (first.size() < MOST_TOLD) {
            first.add(new Fault(row, column == null ? null : Words.excerpt(column), kind, Words.excerpt(value), limit));
        }
    }

    boolean none() {
        return count == 0;
    }

    int count() {
        return count;
    }

    List<Fault> first() {
        return List.copyOf(first);
    }
}
