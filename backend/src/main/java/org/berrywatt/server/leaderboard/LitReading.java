package org.berrywatt.server.leaderboard;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.LitCurrent;
import org.berrywatt.reading.SolarCheck.Lit;
import org.berrywatt.reading.Terminals;
import org.berrywatt.reading.TimedValue;
import org.berrywatt.uncertainty.Estimate;

/**
 * Voltage and current of a cell at a station, with the light there at that time.
 *
 * @param placeUncertainty of the light, from where the cell lay, relative
 */
record LitReading(
        UUID stationId,
        Lamp lamp,
        Instant at,
        Terminals terminals,
        EffectiveIrradiance light,
        double placeUncertainty) {

    Lit lit() {
        return new Lit(terminals, lamp.ultraviolet());
    }

    Estimate currentA() {
        return Objects.requireNonNull(terminals.currentA());
    }

    /** Current per light by the station's own instrument, so that a lamp that fades does not look like a cell that does. */
    TimedValue currentPerLight() {
        var perWm2 = currentA().value() / light.readingWm2().value();
        return new TimedValue(
                at,
                new Estimate(
                        perWm2,
                        Math.hypot(
                                currentA().standardUncertainty()
                                        / light.readingWm2().value(),
                                perWm2 * light.readingWm2().relativeUncertainty())));
    }

    /** Photocurrent in the light that counts; empty where light adds nothing. */
    Optional<LitCurrent> photocurrent(Estimate darkA, Estimate lightWm2) {
        var own = currentA().minus(darkA);
        return own.value() > 0 ? Optional.of(new LitCurrent(lightWm2, own)) : Optional.empty();
    }
}
