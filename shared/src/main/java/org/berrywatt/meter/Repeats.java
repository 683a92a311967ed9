package org.berrywatt.meter;

import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.RepeatedReadings;

/**
 * The same thing read several times with one meter, such as after putting the clips on anew: scatter is evaluated from the
 * readings (type A), the meter's accuracy, which all of them share, from its leaflet (type B; JCGM 100:2008, 4.2 and 4.3).
 *
 * @param accuracyHalfWidth largest promised error at the mean, in the unit of the readings, in [0, ∞)
 */
public record Repeats(RepeatedReadings readings, double accuracyHalfWidth) {

    /**
     * Repeated readings of one meter.
     *
     * @param resolution step of the last digit, in [0, ∞)
     * @throws IllegalArgumentException when there are fewer than two readings, or one is not finite
     */
    public static Repeats of(AccuracyStatement accuracy, double resolution, double... readings) {
        var repeated = RepeatedReadings.of(readings);
        return new Repeats(repeated, accuracy.halfWidth(repeated.mean(), resolution));
    }

    /** Mean with scatter and accuracy together, to first order. */
    public Estimate estimate() {
        var accuracy = Input.rectangular("accuracy", 0, "", accuracyHalfWidth).standardUncertainty();
        return new Estimate(readings.mean(), Math.hypot(readings.standardUncertainty(), accuracy));
    }

    /** Two inputs that add up to the quantity: the mean, by Student's t, and the meter's error, rectangular about 0. */
    public List<Input> inputs(String name, String unit) {
        return List.of(
                readings.input(name + "Mean", unit), Input.rectangular(name + "Accuracy", 0, unit, accuracyHalfWidth));
    }
}
