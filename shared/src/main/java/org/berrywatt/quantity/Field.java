package org.berrywatt.quantity;

import java.util.List;

/**
 * A number that a form asks for. Both ranges are closed intervals in the SI unit of the quantity.
 *
 * @param key name on the wire, for example {@code "voltage"}
 * @param unitKeys units to offer, the default first
 * @param possibleLowSi below this the value cannot be real and is refused
 * @param possibleHighSi above this the value cannot be real and is refused
 * @param usualLowSi below this the value is asked about
 * @param usualHighSi above this the value is asked about
 */
public record Field(
        String key,
        Quantity quantity,
        List<String> unitKeys,
        double possibleLowSi,
        double possibleHighSi,
        double usualLowSi,
        double usualHighSi) {

    /**
     * A field whose ranges are given in its default unit.
     *
     * @param possible lowest and highest value that can be real
     * @param usual lowest and highest value that needs no question
     * @param unitKeys units to offer, the default first
     * @throws IllegalArgumentException when the usual range is not within the possible one, or a unit is unknown
     */
    public static Field of(String key, Quantity quantity, Range possible, Range usual, String... unitKeys) {
        MeasuringUnit unit = Units.of(unitKeys[0])
                .orElseThrow(() -> new IllegalArgumentException("no unit has the key " + unitKeys[0]));
        return new Field(
                key,
                quantity,
                List.of(unitKeys),
                unit.si(possible.low()),
                unit.si(possible.high()),
                unit.si(usual.low()),
                unit.si(usual.high()));
    }

    /** Ranges may touch, but the usual range lies within the possible one. */
    public Field {
        boolean nested = possibleLowSi <= usualLowSi && usualLowSi < usualHighSi && usualHighSi <= possibleHighSi;
        if (!nested) {
            throw new IllegalArgumentException("field " + key + ": the usual range [" + usualLowSi + ", " + usualHighSi
                    + "] must lie within the possible range [" + possibleLowSi + ", " + possibleHighSi + "]");
        }
    }

    /** A closed interval in the field's default unit. */
    public record Range(double low, double high) {

        public static Range of(double low, double high) {
            return new Range(low, high);
        }
    }
}
