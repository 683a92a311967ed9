package org.berrywatt.meter;

import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Shape;

/**
 * What a meter's leaflet promises: ±(percent of reading + digits). The reading lies anywhere within (JCGM 100:2008, 4.3.7),
 * so that its standard uncertainty is the half-width over √3.
 *
 * @param percentOfReading in [0, 100]
 * @param digits steps of the last digit, in [0, 100]
 */
public record AccuracyStatement(double percentOfReading, double digits) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when either lies outside [0, 100]
     */
    public AccuracyStatement {
        if (!(percentOfReading >= 0 && percentOfReading <= 100 && digits >= 0 && digits <= 100)) {
            throw new IllegalArgumentException("an accuracy statement has percent and digits in [0, 100], not ±("
                    + percentOfReading + " % + " + digits + " digits)");
        }
    }

    /** Largest promised error of a reading, in the unit of the reading. */
    public double halfWidth(double reading, double resolution) {
        return percentOfReading / 100 * Math.abs(reading) + digits * resolution;
    }

    /** Standard uncertainty of a reading whose last digit steps by the resolution, in the unit of the reading. */
    public double standardUncertainty(double reading, double resolution) {
        return Shape.RECTANGULAR.standardUncertainty(halfWidth(reading, resolution));
    }

    /** The reading with its standard uncertainty. */
    public Estimate estimate(double reading, double resolution) {
        return new Estimate(reading, standardUncertainty(reading, resolution));
    }
}
