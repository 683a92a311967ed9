package org.berrywatt.server.calculator;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.LightSource;
import org.berrywatt.light.StationLight;
import org.berrywatt.light.TimedReading;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.server.typed.Given;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * The light that a cell had when it was read.
 *
 * @param notes what a reader should know of it
 */
record CellLight(LightAtCell atCell, List<Remark> notes) {

    private static final String STATION = "station";
    private static final double SECONDS = 60;

    static CellLight of(NormalisationRequest request) {
        var light = Given.need("light", request.light());
        var source = Part.of("light", () -> LightSources.of(light));
        var reading = reading(request, source, Part.of("light", () -> LightCalculation.reading(light)));
        return Part.of("light", () -> of(light, reading));
    }

    private static CellLight of(LightRequest light, StationLight reading) {
        var geometry = LightGeometry.of(light);
        EffectiveIrradiance irradiance = LightCalculation.irradiance(light, geometry, reading.raw());
        return new CellLight(new LightAtCell(irradiance, STATION, reading.stale()), geometry.notes());
    }

    /** As sure as its last digit and its age let it be, or as it is said to be. */
    private static StationLight reading(NormalisationRequest request, LightSource source, double shown) {
        var resolution = Ranges.LIGHT_RESOLUTION.or(0, "lightResolution", request.lightResolution());
        var age = Duration.ofMillis(Math.round(
                1000 * SECONDS * Ranges.LIGHT_AGE_MINUTES.or(0, "lightAgeMinutes", request.lightAgeMinutes())));
        var percent = Ranges.PERCENT.maybe("lightUncertaintyPercent", request.lightUncertaintyPercent());
        var read = TimedReading.shown(Instant.EPOCH, shown, resolution);
        var held = source instanceof Lamp lamp
                ? StationLight.at(lamp, List.of(read), Instant.EPOCH.plus(age))
                : new StationLight(read.raw(), age, false);
        return known(held, percent);
    }

    private static StationLight known(StationLight held, @Nullable Double percent) {
        var value = held.raw().value();
        return percent == null
                ? held
                : new StationLight(new Estimate(value, percent / 100 * value), held.age(), held.stale());
    }
}
