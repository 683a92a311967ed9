package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.List;

/** Slips that were noticed and put right: the first entry stays, the correction takes its place. */
final class Slip {

    private static final String LEADS_SWAPPED = "H1";
    private static final String MICRO_FOR_MILLI = "S2";

    private Slip() {}

    /** The reading alone, or the slip and then the reading as its correction. */
    static List<Recorded> around(Visit visit, Recorded right) {
        String label = visit.round() == 0 ? visit.life().cell().label() : "";
        return switch (label) {
            case LEADS_SWAPPED -> corrected(right, "-" + right.voltage(), "-" + right.current(), true);
            case MICRO_FOR_MILLI ->
                corrected(right, right.voltage(), right.current().replace("mA", "µA"), false);
            default -> List.of(right);
        };
    }

    private static List<Recorded> corrected(Recorded right, String voltage, String current, boolean confirmed) {
        Recorded slip = new Recorded(
                right.id(),
                right.cellId(),
                right.kind(),
                right.stationId(),
                voltage,
                current,
                confirmed,
                "",
                List.of(),
                right.at());
        return List.of(slip, correction(right, right.at().plusSeconds(48)));
    }

    private static Recorded correction(Recorded right, LocalDateTime at) {
        return new Recorded(
                Scenario.id("correction of " + right.id()),
                right.cellId(),
                right.kind(),
                right.stationId(),
                right.voltage(),
                right.current(),
                false,
                right.id(),
                List.of(),
                at);
    }
}
