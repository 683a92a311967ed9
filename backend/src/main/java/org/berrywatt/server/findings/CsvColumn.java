package org.berrywatt.server.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.berrywatt.contract.FindingsTableAnswer;
import org.berrywatt.server.findings.CsvLines.Line;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** A column of a file: numbers where every value is one, else names. */
final class CsvColumn {

    /** More names than this are no levels that cells could share. */
    private static final int MOST_NAMES = 200;

    private final String name;
    private final int index;
    private final CsvNumber numbers;
    /** One text for each level, however many cells have it. */
    private final Map<String, String> levels = new HashMap<>();

    /** Whether a value is a number, looked at once however many cells have it. */
    private final Map<String, Boolean> plausible = new HashMap<>();

    private int given;
    private int numeric;
    private int missing;
    private @Nullable Line odd;

    CsvColumn(String name, int index, List<Line> rows, CsvNumber numbers) {
        this.name = name;
        this.index = index;
        this.numbers = numbers;
        rows.forEach(this::count);
    }

    private void count(Line row) {
        var value = value(row);
        if (value.isEmpty()) {
            missing++;
            return;
        }
        given++;
        if (plausible.computeIfAbsent(value, this::isPlausible)) {
            numeric++;
        } else if (odd == null) {
            odd = row;
        }
    }

    private boolean isPlausible(String value) {
        return Math.abs(numbers.of(value).orElse(Double.NaN)) <= CsvNumber.MOST;
    }

    String name() {
        return name;
    }

    /** Short lines end with values that are missing. */
    String value(Line row) {
        return index < row.values().size() ? row.values().get(index) : "";
    }

    boolean isNumber() {
        return given > 0 && numeric == given;
    }

    boolean isParameter() {
        return isNumber() || plausible.size() <= MOST_NAMES;
    }

    @Nullable
    String level(Line row) {
        var value = value(row);
        if (value.isEmpty()) {
            return null;
        }
        return levels.computeIfAbsent(
                value, own -> isNumber() ? CsvNumber.level(numbers.of(own).orElseThrow()) : own);
    }

    FindingsTableAnswer.Column answer(String use) {
        var told = Optional.ofNullable(odd).filter(row -> numeric > given / 2 && !isNumber() && !use.equals("outcome"));
        return new FindingsTableAnswer.Column(
                name,
                use,
                isNumber() ? "number" : "sort",
                plausible.size(),
                missing,
                told.map(Line::number).orElse(null),
                told.map(row -> Words.excerpt(value(row))).orElse(null));
    }
}
