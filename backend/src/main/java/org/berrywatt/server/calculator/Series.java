package org.berrywatt.server.calculator;

import org.berrywatt.server.typed.Given;
import org.jspecify.annotations.Nullable;

/** Cells in series: a module is one diode with that many times the ideality factor of a cell. */
final class Series {

    private static final int MOST_CELLS = 1000;

    private Series() {}

    static int cells(@Nullable Integer given) {
        return given == null ? 1 : Given.between("cellsInSeries", given, 1, MOST_CELLS);
    }
}
