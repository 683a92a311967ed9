package org.berrywatt.server.findings;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.berrywatt.findings.Factor;

/** Numbers as files hold them: a point as decimal mark, or a comma where commas do not part the values; no thousands marks. */
final class CsvNumber {

    /** Wider than anything that is measured in a lab day. */
    static final double MOST = 1e9;

    private static final Pattern NUMBER = Pattern.compile("[-+\u2212]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");

    private final char separator;

    CsvNumber(char separator) {
        this.separator = separator;
    }

    OptionalDouble of(String value) {
        if (value.isEmpty() || Character.isLetter(value.charAt(0))) {
            return OptionalDouble.empty();
        }
        var point = separator == ',' ? value : value.replace(',', '.');
        return NUMBER.matcher(point).matches()
                ? OptionalDouble.of(Double.parseDouble(point.replace('\u2212', '-')))
                : OptionalDouble.empty();
    }

    /** The level of a number; values that differ in how they are written are one. */
    static String level(double number) {
        return Factor.text(number);
    }
}
