package org.berrywatt.demo;

import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.demo.Rows.Row;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SpotReading;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.reading.Terminals;

/** Readings in the terms of the science, as the class's meters vouch for them. */
final class MeterBook {

    private static final Multimeter METER = Multimeter.classroom();

    private final Rows points = Rows.of("sweep-points");

    static Terminals terminals(Row reading) {
        Amount volts = volts(reading);
        Amount amperes = amperes(reading);
        return new Terminals(
                METER.voltageV(volts.valueSi(), volts.resolutionSi()),
                METER.currentA(amperes.valueSi(), amperes.resolutionSi()));
    }

    static Shown current(Row reading) {
        return Shown.by(METER.current(), amperes(reading));
    }

    UnderLight underLight(Row reading) {
        return reading.text("kind").equals("light")
                ? SpotReading.with(METER, amperes(reading), volts(reading))
                : LoadSweep.of(Sweep.of(points.where("reading_id", reading.text("id"))
                        .map(MeterBook::point)
                        .toList()));
    }

    private static SweepPoint point(Row row) {
        Amount volts = volts(row);
        double ohm = Typed.amount(Quantity.RESISTANCE, row.text("load")).valueSi();
        double uncertaintyV =
                METER.voltageV(volts.valueSi(), volts.resolutionSi()).standardUncertainty();
        return new SweepPoint(volts.valueSi(), volts.valueSi() / ohm, uncertaintyV, uncertaintyV / ohm);
    }

    private static Amount volts(Row row) {
        return Typed.amount(Quantity.VOLTAGE, row.text("voltage"));
    }

    private static Amount amperes(Row row) {
        return Typed.amount(Quantity.CURRENT, row.text("current"));
    }
}
