package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.FindingsTableAnswer;
import org.berrywatt.contract.FindingsTableAnswer.Fault;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.findings.Standing;
import org.berrywatt.server.findings.CsvLines.Line;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.jspecify.annotations.Nullable;

/** A file of cells by rows, with a line of names above them, as a table to be compared. */
final class CsvTable {

    static final int MOST_CHARACTERS = 12_000_000;
    private static final Set<String> FAILED = Set.of("failed", "broken", "defekt", "kaputt");

    private final CsvLines file;
    private final List<String> names;
    private final List<Line> rows;
    private final Roles roles;
    private final CsvFaults faults;
    private final List<CsvColumn> columns;

    /** @throws Refusal {@code value.missing}, {@code findings.tableTooLarge}, {@code choice.unknown} for a column */
    CsvTable(FindingsTableRequest request) {
        var csv = Given.need("csv", request.csv());
        if (csv.length() > MOST_CHARACTERS) {
            throw Refusal.of(ProblemCode.FINDINGS_TABLE_TOO_LARGE)
                    .field("csv")
                    .value(csv.length())
                    .limit("[0, " + MOST_CHARACTERS + "]");
        }
        file = CsvLines.of(csv);
        names = file.lines().isEmpty() ? List.of() : file.lines().get(0).values();
        rows = file.lines().isEmpty()
                ? List.of()
                : file.lines().subList(1, file.lines().size());
        roles = Roles.of(request, names);
        faults = new CsvFaults(file, names, rows);
        columns = faults.none()
                ? IntStream.range(0, names.size())
                        .mapToObj(i -> new CsvColumn(names.get(i), i, rows, new CsvNumber(file.separator())))
                        .toList()
                : List.of();
        columns.stream()
                .filter(column -> roles.use(column.name()).equals("outcome"))
                .forEach(this::checkOutcome);
    }

    private void checkOutcome(CsvColumn outcome) {
        var numbers = new CsvNumber(file.separator());
        for (var row : rows) {
            var value = outcome.value(row);
            if (!value.isEmpty() && !isFailed(value)) {
                var number = numbers.of(value).orElse(Double.NaN);
                if (Double.isNaN(number)) {
                    faults.add(row, outcome.name(), "noNumber", value, "");
                } else if (!(number >= 0 && number <= CsvNumber.MOST)) {
                    faults.add(row, outcome.name(), "outOfRange", value, "[0, 1e9]");
                }
            }
        }
    }

    private static boolean isFailed(String value) {
        return FAILED.contains(value.toLowerCase(Locale.ROOT));
    }

    FindingsTableAnswer look() {
        return new FindingsTableAnswer(
                rows.size(),
                columns.stream().map(column -> column.answer(use(column))).toList(),
                faults.first(),
                faults.count());
    }

    private String use(CsvColumn column) {
        var use = roles.use(column.name());
        return use.equals("parameter") && !column.isParameter() ? "setAside" : use;
    }

    /** @throws Refusal {@code findings.tableFault} with the first thing to mend, {@code value.missing} without an outcome */
    StudyTable study() {
        faults.first().stream().findFirst().ifPresent(CsvTable::refuse);
        Given.need("outcome", roles.outcome());
        var parameters = columns.stream()
                .filter(column -> use(column).equals("parameter"))
                .toList();
        return new StudyTable(
                parameters.stream()
                        .map(column -> new Column(column.name(), column.isNumber(), null))
                        .toList(),
                IntStream.range(0, rows.size())
                        .mapToObj(i -> row(i, parameters))
                        .toList());
    }

    private static void refuse(Fault fault) {
        throw Refusal.of(ProblemCode.FINDINGS_TABLE_FAULT)
                .field(fault.column() == null ? "csv" : fault.column())
                .value(fault.value())
                .with("row", fault.row() == null ? "–" : fault.row());
    }

    String outcome() {
        return Given.need("outcome", roles.outcome());
    }

    private StudyRow row(int index, List<CsvColumn> parameters) {
        var row = rows.get(index);
        var outcome = value(row, roles.outcome());
        List<@Nullable String> levels = new ArrayList<>();
        parameters.forEach(column -> levels.add(column.level(row)));
        return new StudyRow(
                null,
                roles.label() == null ? String.valueOf(row.number()) : value(row, roles.label()),
                group(row, roles.team()),
                null,
                group(row, roles.day()),
                outcome.isEmpty() ? Standing.WAITING : isFailed(outcome) ? Standing.FAILED : Standing.COUNTS,
                outcome.isEmpty() || isFailed(outcome) ? null : exact(outcome),
                null,
                "",
                Group.NONE,
                levels);
    }

    /** A file says nothing of how sure a number is. */
    private Figure exact(String outcome) {
        double number = new CsvNumber(file.separator()).of(outcome).orElseThrow();
        return new Figure(number, 0, number, number);
    }

    private Group group(Line row, @Nullable String column) {
        var value = value(row, column);
        return new Group(value, value);
    }

    private String value(Line row, @Nullable String column) {
        return column == null ? "" : columns.get(names.indexOf(column)).value(row);
    }
}
