package org.berrywatt.calibration;

import org.berrywatt.light.Lamp;

/** The stations of a simulated day; how far their light wanders is the lamp's habit in docs/science/light.md. */
enum StationKind {
    LED_DESK(Lamp.COOL_LED, 100, 0.03, 45),
    HALOGEN_DESK(Lamp.HALOGEN, 60, 0.05, 30),
    WINDOW_SILL(Lamp.WINDOW, 200, 0.20, 15);

    static final int MINUTES = 90;

    private final Lamp lamp;
    private final double usualWm2;
    private final double driftPerRootHour;
    private final int minutes;

    StationKind(Lamp lamp, double usualWm2, double driftPerRootHour, int minutes) {
        this.lamp = lamp;
        this.usualWm2 = usualWm2;
        this.driftPerRootHour = driftPerRootHour;
        this.minutes = minutes;
    }

    Lamp lamp() {
        return lamp;
    }

    double usualWm2() {
        return usualWm2;
    }

    double driftPerRootHour() {
        return driftPerRootHour;
    }

    /** Minutes between two readings of the light. */
    int minutes() {
        return minutes;
    }
}
