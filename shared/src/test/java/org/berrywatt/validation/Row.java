package org.berrywatt.validation;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One line of the validation report.
 *
 * @param what was looked at
 * @param source where the expected value was published
 * @param wanted the limit in words and numbers
 * @param found the measured figure
 * @param holds whether the figure keeps to the limit
 * @param knownMiss why it is known not to hold; null where it must
 */
public record Row(
        String what,
        String source,
        String wanted,
        String found,
        boolean holds,
        @Nullable String knownMiss) {

    private Row(String what, String source, String wanted, String found, boolean holds) {
        this(what, source, wanted, found, holds, null);
    }

    /** The same row, allowed not to hold for a reason that is printed. */
    Row knownToMiss(String reason) {
        return new Row(what, source, wanted, found, holds, reason);
    }

    /** Whether it says something that is not so. */
    boolean isBroken() {
        return !holds && knownMiss == null;
    }

    /** A figure that must not be larger than a limit; NaN does not hold. */
    public static Row atMost(String what, String source, double limit, double found, String unit) {
        return new Row(what, source, "≤ " + text(limit, unit), text(found, unit), found <= limit);
    }

    /** A figure that must not be smaller than a limit; NaN does not hold. */
    public static Row atLeast(String what, String source, double limit, double found, String unit) {
        return new Row(what, source, "≥ " + text(limit, unit), text(found, unit), found >= limit);
    }

    /** A figure that must lie in a closed range; NaN does not hold. */
    public static Row between(String what, String source, double low, double high, double found, String unit) {
        boolean holds = low <= found && found <= high;
        return new Row(what, source, text(low) + " to " + text(high, unit), text(found, unit), holds);
    }

    /** A figure that must agree with a printed one to half a unit of its last digit. */
    public static Row printed(String what, String source, String published, double found, String unit) {
        var digits = published.contains(".") ? published.length() - published.indexOf('.') - 1 : 0;
        var shown = String.format(Locale.ROOT, "%." + digits + "f", found);
        return new Row(what, source, join(published, unit), join(shown, unit), shown.equals(published));
    }

    /** Correct decimal digits of a value, at most 15 (NIST/ITL: log relative error). */
    public static double digits(double found, double certified) {
        return Math.min(15, -Math.log10(Math.abs(found - certified) / Math.abs(certified)));
    }

    private static String text(double value, String unit) {
        return join(text(value), unit);
    }

    private static String text(double value) {
        var size = Math.abs(value);
        var plain = size == 0 || (size >= 0.001 && size < 10_000);
        return String.format(Locale.ROOT, plain ? "%.4g" : "%.2e", value)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }

    private static String join(String number, String unit) {
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
