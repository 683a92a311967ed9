package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the result of one cell rests on. Under the light either voltage and current were read, or a load sweep.
 *
 * @param voltageV open-circuit voltage on the display, in [-10000, 10000]
 * @param voltageResolutionV step of its last digit, in [0, 10000]; 0.001 when left out
 * @param currentA short-circuit current on the display, in [-10000, 10000]
 * @param currentResolutionA step of its last digit, in [0, 10000]; that of a 2000-count meter when left out
 * @param points rows of a load sweep, 5 to 400
 * @param darkCurrentA current of the covered cell, in [-10000, 10000]; not read when left out
 * @param darkCurrentResolutionA step of its last digit, in [0, 10000]; that of a 2000-count meter when left out
 * @param areaCm2 lit area of the film, in [1e-6, 10000]
 * @param areaUncertaintyCm2 standard uncertainty, in [0, 10000]; that of a square measured with a ruler when left out
 * @param light the light reading and how the cell stood in that light
 * @param lightResolution step of the last digit of the light meter, in [0, 1e6], in the unit of the reading; 0 when left out
 * @param lightAgeMinutes time from the light reading to that of the cell, in [0, 1440]; 0 when left out. Kinds of lamps drift,
 *     a standard's spectrum does not
 * @param lightUncertaintyPercent relative standard uncertainty of the reading in per cent, in [0, 100], where it is known; it
 *     takes the place of what last digit and age tell
 * @param temperatureC of the cell, in [-40, 120]; 25 give or take 10 when left out
 * @param temperatureUncertaintyC standard uncertainty, in [0, 100]; 1 when left out
 * @param currentPerKelvin relative change of the current, in [-0.05, 0.05]; 0 when left out
 * @param voltagePerKelvin relative change of the voltage, in [-0.05, 0.05]; -0.004 when left out
 * @param referenceIrradianceWm2 irradiance to which the cell is brought, in [1e-3, 1e5]; 1000 when left out
 * @param referenceAreaCm2 area to which the power is brought, in [1e-6, 10000]; 1 when left out
 * @param seed of the trials behind the intervals; 1 when left out
 */
public record NormalisationRequest(
        @Nullable Double voltageV,
        @Nullable Double voltageResolutionV,
        @Nullable Double currentA,
        @Nullable Double currentResolutionA,
        @Nullable List<@Nullable Row> points,
        @Nullable Double darkCurrentA,
        @Nullable Double darkCurrentResolutionA,
        @Nullable Double areaCm2,
        @Nullable Double areaUncertaintyCm2,
        @Nullable LightRequest light,
        @Nullable Double lightResolution,
        @Nullable Double lightAgeMinutes,
        @Nullable Double lightUncertaintyPercent,
        @Nullable Double temperatureC,
        @Nullable Double temperatureUncertaintyC,
        @Nullable Double currentPerKelvin,
        @Nullable Double voltagePerKelvin,
        @Nullable Double referenceIrradianceWm2,
        @Nullable Double referenceAreaCm2,
        @Nullable Long seed) {

    /**
     * A row of the sweep as the meter showed it: two of load, voltage and current; delivered current positive.
     *
     * @param loadOhm nominal value of the resistor, in [0, 1e9]
     * @param voltageV in [-10000, 10000]
     * @param voltageResolutionV step of its last digit, in [0, 10000]; 0.001 when left out
     * @param currentA in [-10000, 10000]
     * @param currentResolutionA step of its last digit, in [0, 10000]; that of a 2000-count meter when left out
     */
    public record Row(
            @Nullable Double loadOhm,
            @Nullable Double voltageV,
            @Nullable Double voltageResolutionV,
            @Nullable Double currentA,
            @Nullable Double currentResolutionA) {}
}
