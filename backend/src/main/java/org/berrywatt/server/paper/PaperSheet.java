package org.berrywatt.server.paper;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.paper.PaperLines.Line;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/**
 * A file as a table of rows.
 *
 * @param table null when none has its columns
 * @param rows none where a column is missing that each of them needs
 * @param count rows with anything in them
 */
record PaperSheet(String file, @Nullable PaperTable table, List<PaperRow> rows, int count) {

    private static final String BEGINS_A_FORMULA = "=+-@";

    static PaperSheet read(PaperFile file, Faults faults) {
        var lines = PaperLines.of(file, faults);
        if (lines.lines().isEmpty()) {
            return new PaperSheet(file.name(), null, List.of(), lines.count());
        }
        var header = PaperHeader.of(file.name(), lines.lines().get(0), faults);
        if (header.isEmpty()) {
            return new PaperSheet(file.name(), null, List.of(), lines.count());
        }
        var rows = new ArrayList<PaperRow>();
        var below = lines.lines().subList(1, lines.lines().size());
        for (Line line : header.get().isComplete() ? below : List.<Line>of()) {
            rows.add(row(file.name(), header.get(), line, faults));
        }
        return new PaperSheet(file.name(), header.get().table(), rows, lines.count());
    }

    private static PaperRow row(String file, PaperHeader header, Line line, Faults faults) {
        if (line.values().size() > header.width()) {
            faults.tell(
                    file,
                    line.number(),
                    null,
                    line.values().get(header.width()),
                    Refusal.of(ProblemCode.PAPER_TOO_MANY_VALUES)
                            .value(line.values().size())
                            .limit(header.width()));
        }
        Map<String, String> headers = header.places().entrySet().stream()
                .collect(toMap(Entry::getKey, place -> place.getValue().header()));
        var row = new PaperRow(file, line.number(), new HashMap<>(), headers);
        for (PaperColumn column : header.table().columns()) {
            var place = header.places().get(column.key());
            if (place != null && place.at() < line.values().size()) {
                fill(row, column, line.values().get(place.at()), place.unit(), faults);
            }
        }
        return row;
    }

    private static void fill(PaperRow row, PaperColumn column, String text, @Nullable String unit, Faults faults) {
        if (text.isEmpty()) {
            return;
        }
        row.values().put(column.key(), new Typed(column.field() == null ? unescaped(text) : text, unit));
        if (Words.isUnfit(text)) {
            faults.tell(row, column.key(), Refusal.of(ProblemCode.TEXT_UNFIT).value(Words.excerpt(text)));
        } else if (column.field() == null && beginsAFormula(text)) {
            faults.tell(row, column.key(), Refusal.of(ProblemCode.PAPER_FORMULA).value(Words.excerpt(text)));
        }
    }

    /** The tidy tables put an apostrophe in front of such a text. */
    private static String unescaped(String text) {
        return text.charAt(0) == '\'' && text.length() > 1 && beginsAFormula(text.substring(1))
                ? text.substring(1)
                : text;
    }

    private static boolean beginsAFormula(String text) {
        return BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0;
    }
}
