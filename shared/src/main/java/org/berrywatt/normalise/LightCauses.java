package org.berrywatt.normalise;

/**
 * Names of what cells share in their light: one reading of a station, one light meter, one lamp seen by one dye. Where two
 * cells share a cause, its error is the same and cancels in their comparison.
 */
record LightCauses(String reading, String calibration, String mismatch, String total) {

    static LightCauses of(LightAtCell at) {
        var light = at.irradiance();
        var instrument = light.instrument().key();
        var lamp = light.lamp().key();
        return new LightCauses(
                "station." + at.station(),
                "instrument." + instrument,
                "mismatch." + instrument + "." + lamp + "." + light.dye().key(),
                "total." + instrument + "." + lamp);
    }
}
