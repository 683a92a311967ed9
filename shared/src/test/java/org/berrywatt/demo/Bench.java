package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.berrywatt.curve.Diode;
import org.berrywatt.demo.Recorded.Point;

/** Measures a cell at its visit and writes down what the meter shows. */
record Bench(Visit visit) {

    /** Part of the light that gets under the box. */
    private static final double LIGHT_LEAK = 0.002;

    List<Recorded> readings() {
        List<Recorded> written = new ArrayList<>();
        written.add(recorded("dark", LIGHT_LEAK, visit.at().plusSeconds(60)));
        written.addAll(Slip.around(visit, recorded("light", 1, visit.at().plusSeconds(175))));
        if (visit.sweep()) {
            written.add(sweep(visit.at().plusSeconds(510)));
        }
        return written;
    }

    private PlannedCell planned() {
        return visit.life().cell();
    }

    private Recorded recorded(String kind, double partOfLight, LocalDateTime at) {
        Diode cell = cell(partOfLight, at);
        return new Recorded(
                id(kind),
                planned().id(),
                kind,
                kind.equals("dark") ? "" : visit.station().id(),
                habit().voltage(meter().voltageV(cell)),
                habit().current(meter().currentA(cell)),
                false,
                "",
                List.of(),
                at);
    }

    private Recorded sweep(LocalDateTime at) {
        Diode lit = cell(1, at);
        List<Point> points = Load.BOX.stream()
                .map(load ->
                        new Point(load.marking(habit()), habit().voltage(meter().voltageAcrossV(lit, load.trueOhm()))))
                .toList();
        return new Recorded(
                id("sweep"), planned().id(), "sweep", visit.station().id(), "", "", false, "", points, at);
    }

    private String id(String kind) {
        return Scenario.id("reading " + planned().label() + " " + visit.round() + " " + kind);
    }

    private Diode cell(double partOfLight, LocalDateTime at) {
        double contact = planned().draws("contact " + visit.round()).factor(0.03);
        double batteryA = contact * Battery.of(planned()).currentA(visit.life().filled(), at);
        double effectiveWm2 = partOfLight * visit.station().effectiveWm2(at);
        Diode cell = Nature.cell(planned(), effectiveWm2, batteryA, contact);
        return visit.life().fate().endsAt("measure") ? Nature.shorted(cell) : cell;
    }

    private Habit habit() {
        return planned().team().habit();
    }

    private Meter meter() {
        return planned().team().meter();
    }
}
