package org.berrywatt.cell;

import static org.berrywatt.light.DyeFamily.ANTHOCYANIN;
import static org.berrywatt.light.DyeFamily.BETALAIN;
import static org.berrywatt.light.DyeFamily.CHLOROPHYLL;
import static org.berrywatt.light.DyeFamily.OTHER;
import static org.berrywatt.light.DyeFamily.UNDYED;

import java.util.Arrays;
import org.berrywatt.light.DyeFamily;

/** What the dye is pressed or brewed from, with the family of its main pigment (common botanical knowledge, no source). */
enum DyeSource {
    BLACKBERRY("blackberry", ANTHOCYANIN),
    RASPBERRY("raspberry", ANTHOCYANIN),
    BLUEBERRY("blueberry", ANTHOCYANIN),
    BLACKCURRANT("blackcurrant", ANTHOCYANIN),
    ELDERBERRY("elderberry", ANTHOCYANIN),
    CHERRY("cherry", ANTHOCYANIN),
    POMEGRANATE("pomegranate", ANTHOCYANIN),
    HIBISCUS("hibiscus", ANTHOCYANIN),
    RED_CABBAGE("redCabbage", ANTHOCYANIN),
    BEETROOT("beetroot", BETALAIN),
    PRICKLY_PEAR("pricklyPear", BETALAIN),
    SPINACH("spinach", CHLOROPHYLL),
    PARSLEY("parsley", CHLOROPHYLL),
    TURMERIC("turmeric", OTHER),
    PAPRIKA("paprika", OTHER),
    ONION_SKIN("onionSkin", OTHER),
    BLACK_TEA("blackTea", OTHER),
    OTHER_PLANT("otherPlant", OTHER),
    NONE("none", UNDYED);

    private final String key;
    private final DyeFamily family;

    DyeSource(String key, DyeFamily family) {
        this.key = key;
        this.family = family;
    }

    static String[] keys() {
        return Arrays.stream(values()).map(source -> source.key).toArray(String[]::new);
    }

    static DyeFamily familyOf(String key) {
        return Arrays.stream(values())
                .filter(source -> source.key.equals(key))
                .map(source -> source.family)
                .findFirst()
                .orElse(OTHER);
    }
}
