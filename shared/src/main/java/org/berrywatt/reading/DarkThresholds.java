package org.berrywatt.reading;

/**
 * Where one class of cell ends and the next begins; settings of a lab day.
 *
 * @param responseFactor standard uncertainties by which light must change a reading, in (0, ∞)
 * @param smallDarkShare dark part of the current up to which a cell is plainly photovoltaic, in [0, 1]
 * @param largeDarkShare dark part of the current from which the cell is a battery, in [smallDarkShare, 1]
 * @param darkVoltageV dark voltage that is worth a word, in (0, ∞)
 * @param darkVoltageShare part of the voltage under light from which a dark voltage is worth a word, in (0, 1]
 * @param highestVoltageV beyond this no cell of titania and iodide goes, in (0, ∞)
 */
public record DarkThresholds(
        double responseFactor,
        double smallDarkShare,
        double largeDarkShare,
        double darkVoltageV,
        double darkVoltageShare,
        double highestVoltageV) {

    /** 3 u; 5 % and 50 % of the current; 50 mV or 20 % of the voltage; 0.9 V (common practice, no source). */
    public static DarkThresholds usual() {
        return new DarkThresholds(3, 0.05, 0.5, 0.050, 0.2, 0.9);
    }
}
