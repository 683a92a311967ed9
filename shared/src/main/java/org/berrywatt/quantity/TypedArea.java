package org.berrywatt.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.quantity.Understanding.Understood;
import org.jspecify.annotations.Nullable;

/**
 * Reads the area of a film or mask: two sides ({@code "15 x 15"} beside mm, {@code "1,5 cm × 2 cm"}) or an area
 * ({@code "2,25"} beside cm²).
 *
 * <p>Each side is read off a ruler with a standard uncertainty of {@value #RULER_M} m (common practice, no source), so
 * that u(A)² = (a² + b²) u². Of an area given as one number the sides are unknown; a square is assumed.
 */
public final class TypedArea {

    /** Standard uncertainty of a side read off a school ruler, in metres. */
    public static final double RULER_M = 0.5e-3;

    private static final Pattern TIMES = Pattern.compile("[xX\\u00d7*\\u2715]");
    private static final Set<Quantity> LENGTH = EnumSet.of(Quantity.LENGTH);
    private static final Set<Quantity> AREA = EnumSet.of(Quantity.AREA);

    private TypedArea() {}

    /**
     * Reads two sides or an area.
     *
     * @param text as typed, of any content
     * @param unitKey key of the unit chosen beside the field: of a length for sides, of an area otherwise
     */
    public static Understanding<Area> read(String text, @Nullable String unitKey) {
        String[] sides = TIMES.split(text, -1);
        return switch (sides.length) {
            case 1 -> ofArea(TypedNumber.read(text, unitKey, AREA));
            case 2 -> ofSides(text, sides[0], sides[1], unitKey);
            default -> new Misunderstood<>(Slip.NOT_A_NUMBER, text.strip(), "15 x 15; 1,5 x 2; 2.25");
        };
    }

    private static Understanding<Area> ofArea(Understanding<Amount> read) {
        if (read instanceof Misunderstood<Amount> it) {
            return new Misunderstood<>(it.slip(), it.value(), it.expected());
        }
        return oneOf(meanings(read).stream().map(TypedArea::square).toList());
    }

    /** A unit typed behind one side counts for the other, too. */
    private static Understanding<Area> ofSides(String text, String a, String b, @Nullable String unitKey) {
        Understanding<Amount> first =
                TypedNumber.read(a, unitOf(TypedNumber.read(b, unitKey, LENGTH), unitKey), LENGTH);
        Understanding<Amount> second = TypedNumber.read(b, unitOf(first, unitKey), LENGTH);
        if (first instanceof Misunderstood<Amount> it) {
            return new Misunderstood<>(it.slip(), it.value(), it.expected());
        }
        if (second instanceof Misunderstood<Amount> it) {
            return new Misunderstood<>(it.slip(), it.value(), it.expected());
        }
        return oneOf(rectangles(text.strip(), meanings(first), meanings(second)));
    }

    /**
     * Standard uncertainty of the area of a square measured with a ruler, in m².
     *
     * @param areaM2 in [0, ∞)
     */
    public static double squareUncertaintyM2(double areaM2) {
        return Math.sqrt(2 * areaM2) * RULER_M;
    }

    private static @Nullable String unitOf(Understanding<Amount> side, @Nullable String otherwise) {
        List<Amount> meanings = meanings(side);
        return meanings.isEmpty() ? otherwise : meanings.get(0).unitKey();
    }

    private static List<Amount> meanings(Understanding<Amount> read) {
        if (read instanceof Understood<Amount> it) {
            return List.of(it.meaning());
        }
        return read instanceof Ambiguous<Amount> it ? it.meanings() : List.of();
    }

    private static Understanding<Area> oneOf(List<Area> areas) {
        return areas.size() == 1 ? new Understood<>(areas.get(0)) : new Ambiguous<>(areas);
    }

    /** Where both sides can be read in two ways, one hand wrote both: they are read in the same way. */
    private static List<Area> rectangles(String text, List<Amount> first, List<Amount> second) {
        if (first.size() == 1 && second.size() == 1) {
            return List.of(rectangle(text, first.get(0), second.get(0)));
        }
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            Amount a = first.get(Math.min(i, first.size() - 1));
            Amount b = second.get(Math.min(i, second.size() - 1));
            areas.add(rectangle(a.text() + " x " + b.text() + " " + b.unitKey(), a, b));
        }
        return areas;
    }

    private static Area rectangle(String text, Amount a, Amount b) {
        double areaM2 = signed(a, b)
                * BigDecimal.valueOf(a.valueSi())
                        .multiply(BigDecimal.valueOf(b.valueSi()))
                        .abs()
                        .doubleValue();
        double resolutionM2 = Math.abs(a.valueSi()) * b.resolutionSi() + Math.abs(b.valueSi()) * a.resolutionSi();
        Amount area = new Amount(text, squareOf(b.unitKey()), Quantity.AREA, areaM2, resolutionM2);
        return new Area(area, Math.hypot(a.valueSi(), b.valueSi()) * RULER_M);
    }

    /** A negative side makes a negative area, which no cell has, even when the other side is negative, too. */
    private static int signed(Amount a, Amount b) {
        return a.valueSi() < 0 || b.valueSi() < 0 ? -1 : 1;
    }

    private static Area square(Amount area) {
        return new Area(area, squareUncertaintyM2(Math.abs(area.valueSi())));
    }

    private static String squareOf(String lengthKey) {
        return Units.of(lengthKey + "2").isPresent() ? lengthKey + "2" : "mm2";
    }
}
