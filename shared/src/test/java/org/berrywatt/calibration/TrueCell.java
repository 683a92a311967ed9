package org.berrywatt.calibration;

import java.util.SplittableRandom;
import org.berrywatt.curve.Diode;
import org.berrywatt.light.DyeFamily;

/**
 * A cell as it is.
 *
 * @param atReference under the reference light, at 25 °C
 * @param areaM2 lit area
 */
record TrueCell(Diode atReference, double areaM2, DyeFamily dye) {
    private static final double DECLARED_M2 = 2e-4;

    double powerDensityWm2() {
        return atReference.maximumPower().powerW() / areaM2;
    }

    /** Under the light, temperature and clips of a reading: the current follows the light, the voltage the temperature. */
    Diode underLight(double ratio, double currentFactor, double voltageFactor) {
        var lit = atReference.underLight(ratio);
        var resistance = voltageFactor / currentFactor;
        return new Diode(
                lit.photocurrentA() * currentFactor,
                lit.saturationCurrentA() * currentFactor,
                lit.idealityFactor() * voltageFactor,
                lit.seriesResistanceOhm() * resistance,
                lit.shuntResistanceOhm() * resistance,
                lit.temperatureC());
    }

    /**
     * A home-made cell of a team: at its station Voc 0.2 to 0.5 V, series resistance up to 0.3 and shunt from 2 times Voc/Isc.
     *
     * @param quality factor of the team's photocurrents, 1 in the middle
     * @param ratio reference light over the usual light of the station
     */
    static TrueCell of(double quality, DyeFamily dye, double ratio, SplittableRandom random) {
        var photocurrentA = 150e-6 / ratio * quality * Math.exp(0.3 * random.nextGaussian());
        var idealityFactor = random.nextDouble(1.3, 2.8);
        var diodeV = random.nextDouble(0.2, 0.5);
        var loadOhm = diodeV / photocurrentA;
        var diode = new Diode(
                photocurrentA,
                photocurrentA / Math.expm1(diodeV / (idealityFactor * 0.0257)),
                idealityFactor,
                loadOhm * random.nextDouble(0.02, 0.3),
                loadOhm * random.nextDouble(2, 20),
                25);
        return new TrueCell(diode.underLight(ratio), DECLARED_M2 * random.nextDouble(0.8, 1.25), dye);
    }
}
