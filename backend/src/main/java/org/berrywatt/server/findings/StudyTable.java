package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.findings.Factor;
import org.berrywatt.findings.Study;
import org.jspecify.annotations.Nullable;

/** Cells with their build parameters, column by column. */
record StudyTable(List<Column> columns, List<StudyRow> rows) {

    StudyTable filtered(Filter filter) {
        var facets = Facet.of(columns);
        return new StudyTable(
                columns, rows.stream().filter(row -> filter.keeps(row, facets)).toList());
    }

    Study study() {
        return new Study(
                rows.stream().map(StudyRow::subject).toList(),
                IntStream.range(0, columns.size()).mapToObj(this::factor).toList());
    }

    private Factor factor(int column) {
        var key = columns.get(column).key();
        List<@Nullable String> levels = new ArrayList<>();
        rows.forEach(row -> levels.add(row.levels().get(column)));
        return columns.get(column).number() ? Factor.ofNumbers(key, numbers(levels)) : Factor.ofSorts(key, levels);
    }

    private static List<@Nullable Double> numbers(List<@Nullable String> levels) {
        List<@Nullable Double> numbers = new ArrayList<>();
        levels.forEach(level -> numbers.add(level == null ? null : Double.valueOf(level)));
        return numbers;
    }

    /** Some of them where there are more than a picture can show. */
    List<FindingsAnswer.Dot> dots(int most) {
        return Picked.of(rows.size(), most).mapToObj(i -> dot(rows.get(i))).toList();
    }

    private FindingsAnswer.Dot dot(StudyRow row) {
        return new FindingsAnswer.Dot(
                row.cellId(),
                row.label(),
                row.team().name(),
                row.day().name(),
                row.mark(),
                Facet.standing(row),
                row.figure(),
                row.failedStage(),
                levels(row));
    }

    private List<FindingsAnswer.At> levels(StudyRow row) {
        List<FindingsAnswer.At> levels = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
            var level = row.levels().get(column);
            if (level != null) {
                levels.add(new FindingsAnswer.At(columns.get(column).key(), level));
            }
        }
        return levels;
    }

    List<FindingsAnswer.UnitOf> units() {
        List<FindingsAnswer.UnitOf> units = new ArrayList<>();
        for (var column : columns) {
            if (column.unit() != null) {
                units.add(new FindingsAnswer.UnitOf(column.key(), column.unit()));
            }
        }
        return units;
    }
}
