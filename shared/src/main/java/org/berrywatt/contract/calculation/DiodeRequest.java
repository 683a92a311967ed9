package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A single diode and the voltages at which its current is wanted.
 *
 * @param photocurrentA in [0, 10000]
 * @param saturationCurrentA in [1e-100, 10000]
 * @param idealityFactor of one cell, in [0.1, 100]
 * @param seriesResistanceOhm in [0, 1e9]
 * @param shuntResistanceOhm in [1e-6, 1e15]; no shunt when left out
 * @param temperatureC in [-100, 300]; 25 when left out
 * @param voltagesV each in [-10000, 10000], up to 1000 of them
 * @param cellsInSeries in [1, 1000]; 1 when left out
 */
public record DiodeRequest(
        @Nullable Double photocurrentA,
        @Nullable Double saturationCurrentA,
        @Nullable Double idealityFactor,
        @Nullable Double seriesResistanceOhm,
        @Nullable Double shuntResistanceOhm,
        @Nullable Double temperatureC,
        @Nullable List<@Nullable Double> voltagesV,
        @Nullable Integer cellsInSeries) {}
