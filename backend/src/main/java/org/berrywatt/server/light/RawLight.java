package org.berrywatt.server.light;

import org.berrywatt.server.typed.TypedAmount;

/** What the instrument showed, in lx or in W/m2. */
record RawLight(boolean lux, TypedAmount reading) {

    LightReading inPlaceOf(LightReading wrong) {
        return new LightReading(wrong.id(), lux, reading.valueSi(), reading.resolutionSi(), wrong.at());
    }
}
