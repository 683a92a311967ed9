package org.berrywatt.demo;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.demo.Rows.Row;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.StationLight;
import org.berrywatt.light.TimedReading;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/** The light of the stations in the terms of the science. */
final class LightBook {

    private final Rows stations = Rows.of("stations");
    private final Rows irradiances = Rows.of("irradiances");

    LightAtCell at(Row reading, DyeFamily dye) {
        Row station =
                stations.where("id", reading.text("station_id")).findFirst().orElseThrow();
        Lamp lamp = keyed(Stream.of(Lamp.values()), Lamp::key, station.text("lamp"));
        Instrument instrument = keyed(Stream.of(Instrument.values()), Instrument::key, station.text("instrument"));
        List<TimedReading> course = irradiances
                .where("station_id", station.text("id"))
                .map(row -> new TimedReading(instant(row), shown(row)))
                .toList();
        StationLight light = StationLight.at(lamp, course, instant(reading));
        boolean lux = instrument == Instrument.LUX_METER;
        return new LightAtCell(
                EffectiveIrradiance.of(lamp, instrument, dye, light.raw(), lux), station.text("id"), light.stale());
    }

    private static <T> T keyed(Stream<T> all, Function<T, String> key, String wanted) {
        return all.filter(it -> key.apply(it).equals(wanted)).findFirst().orElseThrow();
    }

    private static Estimate shown(Row row) {
        String text = row.text("reading");
        Amount shown = Typed.amount(text.endsWith("lx") ? Quantity.ILLUMINANCE : Quantity.IRRADIANCE, text);
        return new Estimate(shown.valueSi(), Shape.RECTANGULAR.standardUncertainty(shown.resolutionSi() / 2));
    }

    private static Instant instant(Row row) {
        return LocalDateTime.parse(row.text("at")).toInstant(ZoneOffset.UTC);
    }
}
