package org.berrywatt.light;

/**
 * An absorption band as a bell curve.
 *
 * @param deviationNm standard deviation of the bell
 * @param height electrons per photon at the centre, relative
 */
record DyeBand(double centreNm, double deviationNm, double height) {
    double electronsPerPhoton(double nm) {
        var z = (nm - centreNm) / deviationNm;
        return height * Math.exp(-z * z / 2);
    }

    DyeBand shifted(double nm) {
        return new DyeBand(centreNm + nm, deviationNm, height);
    }

    DyeBand widened(double factor) {
        return new DyeBand(centreNm, deviationNm * factor, height);
    }
}
