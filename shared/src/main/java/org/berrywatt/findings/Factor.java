package org.berrywatt.findings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A build parameter over all cells of a study: which level each was built at. Numbers are levels, too: every value one. */
public final class Factor {

    /** A cell where the parameter was not recorded. */
    static final int NONE = -1;

    /** Further digits come from converting units, not from people. */
    private static final MathContext DIGITS = new MathContext(6);

    private final String key;
    private final boolean number;
    private final List<String> levels;
    private final double[] numbers;
    private final int[] codes;

    private Factor(String key, List<String> levels, double[] numbers, int[] codes) {
        this.key = key;
        this.number = numbers.length > 0;
        this.levels = levels;
        this.numbers = numbers;
        this.codes = codes;
    }

    /**
     * A parameter whose levels have no order.
     *
     * @param values level of every cell; null where it was not recorded
     */
    public static Factor ofSorts(String key, List<@Nullable String> values) {
        List<String> levels = List.copyOf(
                new TreeSet<>(values.stream().filter(Objects::nonNull).toList()));
        TreeMap<String, Integer> places = new TreeMap<>();
        levels.forEach(level -> places.put(level, places.size()));
        int[] codes = values.stream()
                .mapToInt(value -> value == null ? NONE : places.getOrDefault(value, NONE))
                .toArray();
        return new Factor(key, levels, new double[0], codes);
    }

    /**
     * A parameter that is a number.
     *
     * @param values of every cell, finite; null where it was not recorded
     * @throws IllegalArgumentException when a number is not finite
     */
    public static Factor ofNumbers(String key, List<@Nullable Double> values) {
        double[] rounded = values.stream()
                .mapToDouble(value -> value == null ? Double.NaN : rounded(value))
                .toArray();
        double[] numbers = Arrays.stream(rounded)
                .filter(Double::isFinite)
                .sorted()
                .distinct()
                .toArray();
        int[] codes = Arrays.stream(rounded)
                .mapToInt(value -> Double.isNaN(value) ? NONE : Arrays.binarySearch(numbers, value))
                .toArray();
        List<String> levels = Arrays.stream(numbers).mapToObj(Factor::text).toList();
        return new Factor(key, levels, numbers, codes);
    }

    private static double rounded(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number must be finite, got " + value);
        }
        // plus 0: there is no level "minus nothing"
        return new BigDecimal(value, DIGITS).doubleValue() + 0.0;
    }

    /** A number as the key of its level. */
    public static String text(double number) {
        BigDecimal exact = new BigDecimal(number, DIGITS);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    public String key() {
        return key;
    }

    public boolean isNumber() {
        return number;
    }

    /** Keys of all levels: numbers rising, sorts by key. */
    public List<String> levels() {
        return levels;
    }

    int code(int cell) {
        return codes[cell];
    }

    boolean isRecorded(int cell) {
        return codes[cell] != NONE;
    }

    /** The number at a cell where it was recorded. */
    double numberAt(int cell) {
        return numbers[codes[cell]];
    }

    OptionalDouble number(int level) {
        return number ? OptionalDouble.of(numbers[level]) : OptionalDouble.empty();
    }

    /** How many levels the given cells have. */
    int levelsAmong(int[] cells) {
        return (int) Arrays.stream(cells)
                .map(this::code)
                .filter(code -> code != NONE)
                .distinct()
                .count();
    }

    /** Cells with the parameter recorded. */
    int[] recordedAmong(int[] cells) {
        return Arrays.stream(cells).filter(this::isRecorded).toArray();
    }

    /**
     * Group of every given cell: its level, dense from 0; numbers with more levels than allowed are gathered into four ranges
     * of about as many cells each.
     */
    int[] groups(int[] cells, int most) {
        int[] found = Arrays.stream(cells).map(this::code).toArray();
        int[] distinct = Arrays.stream(found).sorted().distinct().toArray();
        if (!number || distinct.length <= most) {
            return Arrays.stream(found)
                    .map(code -> Arrays.binarySearch(distinct, code))
                    .toArray();
        }
        int[] sorted = Arrays.stream(found).sorted().toArray();
        int[] ends = IntStream.rangeClosed(1, 3)
                .map(quarter -> sorted[sorted.length * quarter / 4])
                .distinct()
                .toArray();
        return Arrays.stream(found).map(code -> reached(ends, code)).toArray();
    }

    /** How many of the rising ends a code has reached. */
    private static int reached(int[] ends, int code) {
        int place = Arrays.binarySearch(ends, code);
        return place >= 0 ? place + 1 : -place - 1;
    }
}
