package org.berrywatt.plan;

import java.util.List;

/**
 * Some cells are somewhere for some time.
 *
 * @param place number of the team, heater or station, from 1; 0 is the class's own bench
 * @param cells labels; on a heater in the order of the positions
 * @param fromMin minutes from the start
 * @param toMin minutes from the start, above fromMin
 * @param bakeC film temperature on a heater, in °C; NaN elsewhere
 */
public record Slot(Kind kind, int place, List<String> cells, int fromMin, int toMin, double bakeC) {

    /** What happens there. */
    public enum Kind {
        FILM("film"),
        COUNTER_ELECTRODE("counterElectrode"),
        BAKE("bake"),
        DYE_AND_CLOSE("dyeAndClose"),
        MEASURE("measure");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    static Slot at(Kind kind, int place, List<String> cells, int fromMin, int minutes) {
        return new Slot(kind, place, cells, fromMin, fromMin + minutes, Double.NaN);
    }
}
