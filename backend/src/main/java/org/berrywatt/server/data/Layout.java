package org.berrywatt.server.data;

import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;

/** Whom a table is written for: a program, or a spreadsheet that opens it at a double click. */
enum Layout {
    /** RFC 4180 to the letter. */
    PLAIN("", ',', '.'),
    /** With the byte order mark by which spreadsheets know UTF-8. */
    SPREADSHEET("\uFEFF", ',', '.'),
    /** Spreadsheets of languages with a decimal comma part columns by semicolons; common practice, no source. */
    SPREADSHEET_WITH_COMMA("\uFEFF", ';', ',');

    private final String mark;
    private final char between;
    private final char decimal;

    Layout(String mark, char between, char decimal) {
        this.mark = mark;
        this.between = between;
        this.decimal = decimal;
    }

    static Layout of(boolean spreadsheet, boolean decimalComma) {
        if (!spreadsheet) {
            return PLAIN;
        }
        return decimalComma ? SPREADSHEET_WITH_COMMA : SPREADSHEET;
    }

    String mark() {
        return mark;
    }

    CSVFormat format() {
        return CSVFormat.RFC4180.builder().setDelimiter(between).get();
    }

    @Nullable
    String number(@Nullable String text) {
        return text == null ? null : text.replace('.', decimal);
    }
}
