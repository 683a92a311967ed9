package org.berrywatt.cell;

import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Field.Range;
import org.berrywatt.quantity.Quantity;

/**
 * Ranges of the numbers in a recipe. Usual is what school recipes use and what a class may well try; possible is what can be
 * done at all. Where no source is named: common practice, no source.
 */
final class BuildFields {

    /**
     * Film held at 450 °C (Smestad and Grätzel, J. Chem. Educ. 75, 752, 1998; from memory); pressed films at 120 to 150 °C;
     * soda-lime glass sags above some 550 °C and melts at about 1000 °C.
     */
    static final Field BAKE_TEMPERATURE =
            Field.of("bakeTemperature", Quantity.TEMPERATURE, Range.of(0, 1000), Range.of(100, 600), "degC");

    /** 30 min at temperature (Smestad and Grätzel 1998; from memory). */
    static final Field BAKE_TIME =
            Field.of("bakeTime", Quantity.DURATION, Range.of(0, 1440), Range.of(5, 120), "min", "h");

    /** Two probes a centimetre or two apart on coated glass of 7 to 20 Ω per square. */
    static final Field GLASS_RESISTANCE =
            Field.of("glassResistance", Quantity.RESISTANCE, Range.of(0.1, 10e6), Range.of(5, 1000), "ohm", "kohm");

    /** Acid of pH 3 to 4 (Smestad and Grätzel 1998; from memory). */
    static final Field PASTE_ACIDITY =
            Field.of("pasteAcidity", Quantity.ACIDITY, Range.of(0, 14), Range.of(1.5, 8), "pH");

    static final Field GRIND_TIME =
            Field.of("grindTime", Quantity.DURATION, Range.of(0, 600), Range.of(1, 90), "min", "h");

    /** A layer of office tape is 40 to 60 µm thick. */
    static final Field TAPE_LAYERS = Field.of("tapeLayers", Quantity.COUNT, Range.of(0, 10), Range.of(1, 4), "count");

    static final Field DRY_TIME =
            Field.of("dryTime", Quantity.DURATION, Range.of(0, 10080), Range.of(1, 180), "min", "h", "d");

    /** 10 min in berry pulp (Smestad and Grätzel 1998; from memory) to days in a fridge. */
    static final Field SOAK_TIME =
            Field.of("soakTime", Quantity.DURATION, Range.of(0, 43200), Range.of(1, 4320), "min", "h", "d");

    /** A gap of 4 cm² and 40 µm holds 16 µL; a drop has about 50 µL. */
    static final Field ELECTROLYTE_DROPS =
            Field.of("electrolyteDrops", Quantity.COUNT, Range.of(0, 50), Range.of(1, 10), "count");

    private BuildFields() {}
}
