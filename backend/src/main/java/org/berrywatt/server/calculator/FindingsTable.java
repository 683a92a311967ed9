package org.berrywatt.server.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.FindingsRequest;
import org.berrywatt.findings.Factor;
import org.berrywatt.findings.Standing;
import org.berrywatt.findings.Study;
import org.berrywatt.findings.Subject;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** A table as it was sent, made a study. */
final class FindingsTable {

    static final int MOST_ROWS = 2000;
    private static final int MOST_PARAMETERS = 24;
    private static final int MOST_CHARACTERS = 60;
    private static final String FAILED = "failed";
    private static final Range NUMBER = Range.closed(-1e9, 1e9, "");

    private final FindingsRequest request;
    private final List<Map<String, @Nullable Object>> rows;

    private FindingsTable(FindingsRequest request) {
        this.request = request;
        this.rows = Entries.read("rows", request.rows(), 3, MOST_ROWS, (path, row) -> row);
    }

    static Study study(FindingsRequest request) {
        return new FindingsTable(request).study();
    }

    private Study study() {
        var outcome = Named.line("outcome", request.outcome());
        var parameters = Entries.read("parameters", request.parameters(), 1, MOST_PARAMETERS, Named::line);
        Named.requireDistinct("parameters", parameters);
        var subjects = IntStream.range(0, rows.size())
                .mapToObj(i -> subject(i, outcome))
                .toList();
        return new Study(subjects, parameters.stream().map(this::factor).toList());
    }

    private Subject subject(int row, String outcome) {
        var value = rows.get(row).get(outcome);
        var label = String.valueOf(row + 1);
        var team = name(row, request.block());
        var day = name(row, request.day());
        if (value == null) {
            return new Subject(label, team, day, Standing.WAITING, null);
        }
        return FAILED.equals(value)
                ? new Subject(label, team, day, Standing.FAILED, null)
                : new Subject(label, team, day, Standing.COUNTS, performance(path(row, outcome), value));
    }

    private static double performance(String path, Object value) {
        return Ranges.RESULT.need(path, number(path, value));
    }

    private static double number(String path, Object value) {
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        throw Refusal.of(ProblemCode.CALCULATION_OUT_OF_RANGE)
                .field(path)
                .value(excerpt(value))
                .limit(Ranges.RESULT);
    }

    private String name(int row, @Nullable String column) {
        return column == null ? "" : text(path(row, column), rows.get(row).get(column));
    }

    private Factor factor(String parameter) {
        var values = rows.stream().map(row -> row.get(parameter)).toList();
        var given = values.stream().filter(Objects::nonNull).toList();
        return !given.isEmpty() && given.stream().allMatch(Number.class::isInstance)
                ? numbers(parameter, values)
                : sorts(parameter, values);
    }

    private Factor numbers(String parameter, List<@Nullable Object> values) {
        List<@Nullable Double> numbers = new ArrayList<>();
        for (var row = 0; row < values.size(); row++) {
            var value = (Number) values.get(row);
            numbers.add(value == null ? null : NUMBER.need(path(row, parameter), value.doubleValue()));
        }
        return Factor.ofNumbers(parameter, numbers);
    }

    private Factor sorts(String parameter, List<@Nullable Object> values) {
        List<@Nullable String> sorts = new ArrayList<>();
        for (var row = 0; row < values.size(); row++) {
            var value = values.get(row);
            sorts.add(value == null ? null : text(path(row, parameter), value));
        }
        return Factor.ofSorts(parameter, sorts);
    }

    private static String text(String path, @Nullable Object value) {
        return value == null ? "" : Named.line(path, excerpt(value));
    }

    /** One character more than a name may have, so that a longer one is refused and not cut. */
    private static String excerpt(Object value) {
        var text = String.valueOf(value);
        return text.substring(0, Math.min(text.length(), MOST_CHARACTERS + 1));
    }

    private static String path(int row, String column) {
        return "rows[" + row + "]." + column;
    }
}
