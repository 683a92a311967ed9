package org.berrywatt.quantity;

import java.util.List;
import java.util.regex.Pattern;

/**
 * The ways to read digits with marks between them, each as digits with at most a point. Comma and point may both be the
 * decimal sign and both part thousands (ISO 80000-1:2022, 7.3.2 gives either as decimal sign and only the space for groups;
 * meters, phones and habits differ).
 */
final class Decimals {

    private static final Pattern PLAIN = Pattern.compile("\\d+[.,]?\\d*|[.,]\\d+");
    private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern GROUPED = Pattern.compile("[1-9]\\d{0,2}(?:"
            + "([ '])\\d{3}(?:\\1\\d{3})*(?:[.,]\\d*)?"
            + "|(?:,\\d{3})+\\.\\d*|(?:\\.\\d{3})+,\\d*"
            + "|(?:,\\d{3}){2,}|(?:\\.\\d{3}){2,})");

    private Decimals() {}

    /** None when the text is no number, two when a single mark may be either sign: {@code "1,234"}. */
    static List<String> readings(String digits) {
        if (EITHER.matcher(digits).matches()) {
            return List.of(asDecimal(digits), digits.replaceAll("\\D", ""));
        }
        if (GROUPED.matcher(digits).matches()) {
            return List.of(withPoint(digits.replace(firstMark(digits), "")));
        }
        return PLAIN.matcher(digits).matches() ? List.of(withPoint(digits)) : List.of();
    }

    /** No group of thousands begins with zero, so {@code "01.234"} can be read in one way only. */
    private static String asDecimal(String digits) {
        return "0" + withPoint(digits);
    }

    private static String withPoint(String digits) {
        return digits.replace(',', '.');
    }

    private static String firstMark(String digits) {
        return digits.replaceAll("^\\d+(.).*$", "$1");
    }
}
