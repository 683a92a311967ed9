package org.berrywatt.server.data;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * Writes a table as RFC 4180 says. A text that a spreadsheet would take for a formula gets an apostrophe in front, as the
 * OWASP page on CSV injection advises; numbers stay as they are.
 */
final class Csv {

    private static final String BEGINS_A_FORMULA = "=+-@\t\r";

    private final List<Column> columns;
    private final Layout layout;
    private final CSVPrinter printer;

    /** Writes the header at once. */
    Csv(List<Column> columns, Layout layout, Appendable out) throws IOException {
        this.columns = columns;
        this.layout = layout;
        this.printer = new CSVPrinter(out, layout.format());
        out.append(layout.mark());
        printer.printRecord(columns.stream().map(Column::name).toList());
    }

    /** @param cells one for each column, in their order; null for none */
    void row(List<? extends @Nullable String> cells) throws IOException {
        for (int i = 0; i < columns.size(); i++) {
            printer.print(text(columns.get(i).type(), cells.get(i)));
        }
        printer.println();
    }

    private @Nullable String text(ColumnType type, @Nullable String cell) {
        return switch (type) {
            case STRING -> safe(cell);
            case NUMBER -> layout.number(cell);
            default -> cell;
        };
    }

    private static @Nullable String safe(@Nullable String text) {
        return text != null && !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
