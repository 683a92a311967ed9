package org.berrywatt.quantity;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.quantity.Understanding.Understood;
import org.jspecify.annotations.Nullable;

/**
 * Reads a number as people type it: comma or point, spaces of any width, the true minus sign, a unit pasted behind it
 * ({@code "60 mV"}, {@code "2,2 kΩ"}, {@code "450 °C"}). A unit in the text wins over the unit chosen beside the field.
 */
public final class TypedNumber {

    static final String EXAMPLES = "60; 0.06; 0,06";
    private static final int LONGEST = 40;
    private static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("([+-]?) ?([\\d.,' ]*)(?:(?<=\\d)[eE]([+-]?\\d{1,2})(?!\\d))?(.*)");
    private static final Pattern UNIT_LIKE = Pattern.compile("[\\p{L}/°%. ]+");
    private static final Pattern DIGIT_LIKE = Pattern.compile("[oOlI]+");

    private TypedNumber() {}

    /**
     * Reads a typed number.
     *
     * @param text as typed, of any content
     * @param unitKey key of the unit chosen beside the field; null when there is none to choose
     * @param allowed quantities that fit the field, not empty
     * @return the amount; two amounts for {@code "1,234"}, which may be decimal or thousands; or what was wrong
     */
    public static Understanding<Amount> read(String text, @Nullable String unitKey, Set<Quantity> allowed) {
        String plain = Spelling.plain(text);
        Matcher parts = NUMBER_THEN_UNIT.matcher(plain);
        if (plain.isEmpty()) {
            return new Misunderstood<>(Slip.EMPTY, "", EXAMPLES);
        }
        if (plain.length() > LONGEST || !parts.matches()) {
            return notANumber(text);
        }
        List<String> spellings = spellings(parts);
        String typedUnit = parts.group(4).strip();
        if (spellings.isEmpty() || !looksLikeUnit(typedUnit)) {
            return notANumber(text);
        }
        return unit(typedUnit, unitKey, allowed)
                .map(unit -> amounts(text, spellings, unit))
                .orElseGet(() -> wrongUnit(typedUnit.isEmpty() ? unitKey : typedUnit, allowed));
    }

    private static List<String> spellings(Matcher parts) {
        String exponent = parts.group(3) == null ? "" : "e" + parts.group(3);
        return Decimals.readings(parts.group(2).strip()).stream()
                .map(digits -> parts.group(1) + digits + exponent)
                .toList();
    }

    private static boolean looksLikeUnit(String text) {
        boolean known = Units.spelt(text, EnumSet.allOf(Quantity.class)).isPresent();
        boolean word =
                UNIT_LIKE.matcher(text).matches() && !DIGIT_LIKE.matcher(text).matches();
        return text.isEmpty() || known || word;
    }

    private static Optional<MeasuringUnit> unit(String typed, @Nullable String unitKey, Set<Quantity> allowed) {
        if (!typed.isEmpty()) {
            return Units.spelt(typed, allowed);
        }
        return unitKey == null
                ? Units.onlyOne(allowed)
                : Units.of(unitKey).filter(unit -> allowed.contains(unit.quantity()));
    }

    private static Understanding<Amount> amounts(String text, List<String> spellings, MeasuringUnit unit) {
        if (spellings.size() == 1) {
            return new Understood<>(amount(text.strip(), spellings.get(0), unit));
        }
        return new Ambiguous<>(
                spellings.stream().map(it -> amount(it, it, unit)).toList());
    }

    private static Amount amount(String text, String spelling, MeasuringUnit unit) {
        BigDecimal number = new BigDecimal(spelling);
        return new Amount(text, unit.key(), unit.quantity(), unit.si(number), unit.stepSi(number.ulp()));
    }

    private static Understanding<Amount> notANumber(String text) {
        return new Misunderstood<>(Slip.NOT_A_NUMBER, text.strip(), EXAMPLES);
    }

    private static Understanding<Amount> wrongUnit(@Nullable String unit, Set<Quantity> allowed) {
        String given = unit == null ? "" : unit;
        boolean known = Units.of(given).isPresent()
                || Units.spelt(given, EnumSet.allOf(Quantity.class)).isPresent();
        return new Misunderstood<>(known ? Slip.WRONG_UNIT : Slip.UNKNOWN_UNIT, given, Units.symbols(allowed));
    }
}
