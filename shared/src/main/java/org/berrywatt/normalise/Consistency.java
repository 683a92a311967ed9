package org.berrywatt.normalise;

/**
 * Whether five numbers from elsewhere, such as a paper or another class, agree with each other:
 *
 * <pre>efficiency = Jsc · Voc · FF / G        (IEC 60904-1, definition of efficiency)</pre>
 *
 * <p>Each printed number stands for everything that rounds to it. They agree when the efficiencies that the other four allow and
 * those that the printed efficiency allows have one in common.
 *
 * @param printed the printed efficiency, as a part of 1
 * @param efficiency what the other four give, as a part of 1
 * @param low least efficiency that the rounding of the other four allows
 * @param high greatest one; ∞ when the irradiance may round from 0
 * @param fittingIrradianceWm2 irradiance at which all would agree, in W/m²: often the one that was really meant
 */
public record Consistency(Rounded printed, double efficiency, double low, double high, double fittingIrradianceWm2) {

    /**
     * Compares.
     *
     * @param currentDensityAm2 short-circuit current per area, in A/m²
     * @param voltageV open-circuit voltage, in V
     * @param fillFactor as a part of 1
     * @param irradianceWm2 in W/m²
     * @param efficiency as a part of 1
     */
    public static Consistency of(
            Rounded currentDensityAm2,
            Rounded voltageV,
            Rounded fillFactor,
            Rounded irradianceWm2,
            Rounded efficiency) {
        var powerWm2 = currentDensityAm2.value() * voltageV.value() * fillFactor.value();
        return new Consistency(
                efficiency,
                powerWm2 / irradianceWm2.value(),
                currentDensityAm2.low() * voltageV.low() * fillFactor.low() / irradianceWm2.high(),
                currentDensityAm2.high() * voltageV.high() * fillFactor.high() / irradianceWm2.low(),
                powerWm2 / efficiency.value());
    }

    /** Whether rounding explains the difference. */
    public boolean agrees() {
        return printed.low() <= high && low <= printed.high();
    }

    /** Printed efficiency over the one that the others give. */
    public double ratio() {
        return printed.value() / efficiency;
    }
}
