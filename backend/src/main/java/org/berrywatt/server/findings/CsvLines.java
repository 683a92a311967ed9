package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a text file of cells parted by commas, semicolons or tabs, whichever the first line has most of. A value in double
 * quotes may hold any of these, line ends, and a quote written twice (RFC 4180). Empty lines are passed over.
 *
 * @param separator what parts the values
 * @param lines with at least one value that is not empty
 * @param openQuote line of a quote that nobody closed; 0 for none
 */
record CsvLines(char separator, List<Line> lines, int openQuote) {

    private static final char MARK = '\uFEFF';

    /**
     * Values of a line, without outer spaces.
     *
     * @param number in the file, from 1
     */
    record Line(int number, List<String> values) {}

    static CsvLines of(String text) {
        return new Reader(text.isEmpty() || text.charAt(0) != MARK ? text : text.substring(1)).read();
    }

    /** Walks through the text once. */
    private static final class Reader {

        private final String text;
        private final char separator;
        private final List<Line> lines = new ArrayList<>();
        private final StringBuilder value = new StringBuilder();
        private List<String> values = new ArrayList<>();
        private int number = 1;
        private int begun = 1;
        private int quoted;

        Reader(String text) {
            this.text = text;
            this.separator = separatorOf(text.lines().findFirst().orElse(""));
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

        CsvLines read() {
            int at = 0;
            while (at < text.length()) {
                at = quoted > 0 ? inQuotes(at) : plain(at);
            }
            endLine();
            return new CsvLines(separator, lines, quoted);
        }

        private int inQuotes(int at) {
            char each = text.charAt(at);
            boolean twice = each == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"';
            if (each == '"' && !twice) {
                quoted = 0;
            } else {
                value.append(each);
                number += each == '\n' ? 1 : 0;
            }
            return twice ? at + 2 : at + 1;
        }

        private int plain(int at) {
            char each = text.charAt(at);
            if (each == '"' && value.toString().isBlank()) {
                quoted = number;
                value.setLength(0);
            } else if (each == separator) {
                endValue();
            } else if (each == '\n') {
                endLine();
                begun = ++number;
            } else {
                value.append(each);
            }
            return at + 1;
        }

        private void endValue() {
            values.add(value.toString().strip());
            value.setLength(0);
        }

        private void endLine() {
            endValue();
            if (values.stream().anyMatch(each -> !each.isEmpty())) {
                lines.add(new Line(begun, values));
            }
            values = new ArrayList<>();
        }
    }
}
