package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A light station: the true effective irradiance for a berry dye over the afternoon, and what its instrument shows.
 *
 * <p>The instruments show about what the spectral tables of package light say for such a lamp; each is off by a few per cent
 * that nobody in the room knows of.
 *
 * @param shownPerWm2 display per W/m2 of effective irradiance
 * @param everyMin minutes between two readings of the light
 */
record Station(
        String name, String lamp, String instrument, String distance, String angle, double shownPerWm2, int everyMin) {

    static final Station WINDOW = new Station("Window sill", "window", "luxMeter", "", "", 107.0 * 1.04, 15);
    static final Station LED = new Station("LED desk lamp", "coolLed", "luxMeter", "18 cm", "0 deg", 112.8 * 1.04, 30);
    static final Station HALOGEN =
            new Station("Halogen work light", "halogen", "referenceCell", "45 cm", "0 deg", 2.97 * 0.95, 20);
    static final List<Station> ALL = List.of(WINDOW, LED, HALOGEN);

    String id() {
        return Scenario.id("station " + name);
    }

    /** Effective irradiance in W/m2: the window dims with the sun and the clouds, the lamps sag as they warm. */
    double effectiveWm2(LocalDateTime at) {
        double minutes = Duration.between(Scenario.at(13, 30), at).toSeconds() / 60.0;
        return switch (lamp) {
            case "window" -> 112 * StrictMath.exp(-minutes / 190) * (1 + 0.10 * StrictMath.sin(minutes / 17));
            case "coolLed" -> 54 * (0.95 + 0.05 * StrictMath.exp(-minutes / 25));
            default -> 47 * (1 - 0.0004 * minutes) * (1 + 0.015 * StrictMath.sin(minutes / 31));
        };
    }

    /** What a teacher writes down: lux to the nearest ten, watts to the nearest one. */
    String shown(LocalDateTime at) {
        double display =
                shownPerWm2 * effectiveWm2(at) * Draws.of("light " + name + at).factor(0.008);
        return lamp.equals("halogen") ? Math.round(display) + " W/m2" : Math.round(display / 10) * 10 + " lx";
    }
}
