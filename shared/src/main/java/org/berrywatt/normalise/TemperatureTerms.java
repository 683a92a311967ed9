package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;
import org.jspecify.annotations.Nullable;

/**
 * What the cell's temperature did, undone by the relative coefficients of IEC 60891 procedure 2: the current times
 * 1 + α (25 °C - T), the voltage plus Voc β (25 °C - T).
 *
 * @param currentFactor 1 + α (25 °C - T)
 * @param voltagePart β (25 °C - T), a part of the voltage that was read
 */
record TemperatureTerms(Term currentFactor, Term voltagePart) {

    static TemperatureTerms of(@Nullable CellTemperature temperature, Inputs inputs) {
        var known = temperature == null ? CellTemperature.UNKNOWN : temperature;
        var celsius = inputs.add(
                temperature == null
                        ? Input.rectangular(
                                "input.temperature", CellTemperature.REFERENCE_C, "°C", CellTemperature.HALF_WIDTH_K)
                        : Input.normal("input.temperature", temperature.celsius(), "°C"));
        var toReference = celsius.then(value -> CellTemperature.REFERENCE_C - value);
        return new TemperatureTerms(
                toReference.then(kelvin -> 1 + known.currentPerKelvin() * kelvin),
                toReference.then(kelvin -> known.voltagePerKelvin() * kelvin));
    }
}
