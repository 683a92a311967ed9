package org.berrywatt.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A file of the demo day: header and rows, in order of time where there is one. */
record Sheet(String file, List<String> columns, List<List<Object>> rows) {

    /** The file's text by RFC 4180. */
    String text() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(columns);
            printer.printRecords(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
