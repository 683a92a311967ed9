package org.berrywatt.demo;

import java.util.List;

/** A resistor of the load box; its true value differs from its marking, the same one for everybody. */
record Load(double ohm) {

    /** Open end first, closer where the power of such cells peaks. */
    static final List<Load> BOX =
            List.of(1e6, 220e3, 100e3, 47e3, 33e3, 22e3, 15e3, 10e3, 6.8e3, 4.7e3, 3.3e3, 2.2e3, 1e3, 330.0, 100.0)
                    .stream()
                    .map(Load::new)
                    .toList();

    double trueOhm() {
        return ohm * Draws.of("resistor " + ohm).factor(0.015);
    }

    String marking(Habit habit) {
        if (ohm >= 1e6) {
            return habit.written("%.0f", ohm / 1e6, "Mohm");
        }
        return ohm < 1e3
                ? habit.written("%.0f", ohm, "ohm")
                : habit.written(ohm % 1e3 == 0 ? "%.0f" : "%.1f", ohm / 1e3, "kohm");
    }
}
