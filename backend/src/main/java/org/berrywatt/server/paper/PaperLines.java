package org.berrywatt.server.paper;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;

/**
 * The lines of a file that have anything in them. What parts their values is whichever of comma, semicolon and tab the first
 * line has most of.
 *
 * @param lines the first {@link #MOST_ROWS} of them and the one of names
 * @param count of all below the names
 */
record PaperLines(List<Line> lines, int count) {

    /** A class of 40 fills a few hundred rows. */
    static final int MOST_ROWS = 2_000;

    private static final char MARK = '\uFEFF';

    /**
     * @param number in the file, from 1
     * @param values without outer spaces
     */
    record Line(int number, List<String> values) {}

    /** Nothing is taken of a file with a fault. */
    static PaperLines of(PaperFile file, Faults faults) {
        var text = file.csv().indexOf(MARK) == 0 ? file.csv().substring(1) : file.csv();
        if (isNoText(text)) {
            faults.tell(file.name(), null, null, "", Refusal.of(ProblemCode.PAPER_UNREADABLE));
            return new PaperLines(List.of(), 0);
        }
        var lines = parse(file.name(), text, faults);
        if (lines.count() > MOST_ROWS) {
            var refusal = Refusal.of(ProblemCode.PAPER_TOO_MANY_ROWS)
                    .value(lines.count())
                    .limit(MOST_ROWS);
            faults.tell(file.name(), null, null, String.valueOf(lines.count()), refusal);
            return new PaperLines(List.of(), lines.count());
        }
        return lines;
    }

    /** Pictures, documents and letters in a code that is not UTF-8 hold what no typed text holds. */
    private static boolean isNoText(String text) {
        return text.isBlank() || text.chars().anyMatch(each -> each == '\uFFFD' || (each < ' ' && !isWhite(each)));
    }

    private static boolean isWhite(int character) {
        return character == '\t' || character == '\n' || character == '\r';
    }

    private static PaperLines parse(String file, String text, Faults faults) {
        var lines = new ArrayList<Line>();
        var count = 0;
        var row = 0;
        try (var parser = format(text).parse(new StringReader(text))) {
            for (CSVRecord record : parser) {
                row++;
                var values = record.stream().map(String::strip).toList();
                if (values.stream().anyMatch(value -> !value.isEmpty()) && count++ <= MOST_ROWS) {
                    lines.add(new Line(row, values));
                }
            }
        } catch (IOException | UncheckedIOException brokenQuote) {
            faults.tell(file, row + 1, null, "\"", Refusal.of(ProblemCode.PAPER_QUOTE_OPEN));
            return new PaperLines(List.of(), 0);
        }
        return new PaperLines(lines, count - 1);
    }

    private static CSVFormat format(String text) {
        var first = text.lines().findFirst().orElse("");
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(separatorOf(first))
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }

    private static char separatorOf(String first) {
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            best = count(first, candidate) > count(first, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char wanted) {
        return line.chars().filter(each -> each == wanted).count();
    }
}
