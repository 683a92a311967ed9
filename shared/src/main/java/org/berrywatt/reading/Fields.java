package org.berrywatt.reading;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Field.Range;
import org.berrywatt.quantity.Quantity;

/**
 * Every number that a form asks for, with its ranges. Possible is what a home-made cell and a school's lamps can give at
 * all; usual is what needs no question. Where no source is named: common practice, no source.
 */
public final class Fields {

    /**
     * Tens of millivolts under a torch; natural dyes on titania reach 0.2 to 0.55 V, and no titania and iodide cell 0.9 V. A
     * metal in iodine is a battery of up to 1.3 V for zinc (standard potentials, from memory), which a dark check should be
     * able to record. Swapped leads are usual; the dark check tells.
     */
    public static final Field VOLTAGE =
            Field.of("voltage", Quantity.VOLTAGE, Range.of(-3000, 3000), Range.of(-900, 900), "mV", "V", "uV");

    /**
     * Tens of microamperes under a torch. Absorption up to 700 nm in full sun gives at most 21 mA/cm² (ASTM G173-03,
     * integrated); a home-made cell of 4 cm² stays below 20 mA.
     */
    public static final Field CURRENT = Field.of(
            "current", Quantity.CURRENT, Range.of(-200e3, 200e3), Range.of(-20e3, 20e3), "uA", "mA", "A", "nA");

    /** Resistors of a load sweep, 10 Ω to 1 MΩ; the row of a short circuit has 0 and is taken without a question. */
    public static final Field LOAD =
            Field.of("load", Quantity.RESISTANCE, Range.of(0, 100e6), Range.of(1, 10e6), "ohm", "kohm", "Mohm");

    /** Full sun is 1000 W/m² (IEC 60904-3); the edge of a cloud adds to it for minutes. */
    public static final Field IRRADIANCE =
            Field.of("irradiance", Quantity.IRRADIANCE, Range.of(0, 2000), Range.of(1, 1200), "Wm2", "mWcm2");

    /** Full sun is about 122 klx (Michael, Johnston and Moreno 2020). */
    public static final Field ILLUMINANCE =
            Field.of("illuminance", Quantity.ILLUMINANCE, Range.of(0, 250e3), Range.of(50, 140e3), "lx", "klx");

    /** Film or mask: 1 mm² to a whole sheet; a few square centimetres as a rule. */
    public static final Field AREA =
            Field.of("area", Quantity.AREA, Range.of(0.01, 400), Range.of(0.2, 30), "cm2", "mm2");

    /** Lamp to cell. */
    public static final Field DISTANCE =
            Field.of("distance", Quantity.LENGTH, Range.of(0.1, 2000), Range.of(5, 300), "cm", "mm", "m");

    /** Between the light and the upright on the cell; beyond 60° the cosine law is a poor guide on a school bench. */
    public static final Field ANGLE = Field.of("angle", Quantity.ANGLE, Range.of(0, 89), Range.of(0, 60), "deg");

    /** Of the cell while it is read. */
    public static final Field CELL_TEMPERATURE =
            Field.of("cellTemperature", Quantity.TEMPERATURE, Range.of(-20, 120), Range.of(5, 60), "degC");

    /** To which a heater is set: from drying a film to the softening of window glass. Common practice, no source. */
    public static final Field HEATER_TARGET =
            Field.of("heaterTarget", Quantity.TEMPERATURE, Range.of(50, 650), Range.of(60, 550), "degC");

    /** To which a lab day's results are brought. */
    public static final Field REFERENCE_IRRADIANCE =
            Field.of("referenceIrradiance", Quantity.IRRADIANCE, Range.of(1, 2000), Range.of(10, 1000), "Wm2", "mWcm2");

    /** To which a lab day's results are brought. */
    public static final Field REFERENCE_AREA =
            Field.of("referenceArea", Quantity.AREA, Range.of(0.01, 400), Range.of(0.25, 30), "cm2", "mm2");

    private static final List<Field> METER = List.of(
            VOLTAGE,
            CURRENT,
            LOAD,
            IRRADIANCE,
            ILLUMINANCE,
            AREA,
            DISTANCE,
            ANGLE,
            CELL_TEMPERATURE,
            HEATER_TARGET,
            REFERENCE_IRRADIANCE,
            REFERENCE_AREA);

    private static final List<Field> ALL =
            Stream.concat(METER.stream(), recipe()).toList();

    private Fields() {}

    /** Every field: readings, light, lab day, then the numbers of a recipe. */
    public static List<Field> all() {
        return ALL;
    }

    /** The field of a key, or empty when there is none. */
    public static Optional<Field> of(String key) {
        return ALL.stream().filter(field -> field.key().equals(key)).findFirst();
    }

    private static Stream<Field> recipe() {
        return BuildCatalogue.all().stream().map(BuildParameter::field).filter(Objects::nonNull);
    }
}
