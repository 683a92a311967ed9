package org.berrywatt.server.calculator;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.berrywatt.contract.calculation.FittedDiode;
import org.berrywatt.contract.calculation.Spread;
import org.berrywatt.curve.DiodeFit;
import org.berrywatt.curve.DiodeParameter;
import org.berrywatt.curve.FittedParameter;
import org.berrywatt.uncertainty.Estimate;

/** The diode fitted to a sweep, as it travels: of one cell where several stand in series. */
record FittedDiodes(DiodeFit fit, Map<DiodeParameter, FittedParameter> parameters, int cellsInSeries) {

    /** A factor of e^100 says "anything" as well as a larger one, and stays finite. */
    private static final double WIDEST_LOG = 100;

    static FittedDiode of(DiodeFit fit, int cellsInSeries) {
        var parameters = new EnumMap<DiodeParameter, FittedParameter>(DiodeParameter.class);
        fit.parameters().forEach(parameter -> parameters.put(parameter.parameter(), parameter));
        return new FittedDiodes(fit, parameters, cellsInSeries).travelling();
    }

    private FittedDiode travelling() {
        return new FittedDiode(
                value(DiodeParameter.PHOTOCURRENT),
                value(DiodeParameter.SATURATION_CURRENT),
                value(DiodeParameter.IDEALITY),
                value(DiodeParameter.SERIES_RESISTANCE),
                value(DiodeParameter.SHUNT_RESISTANCE),
                fit.rmseA(),
                new FittedDiode.Uncertainties(
                        spread(DiodeParameter.PHOTOCURRENT),
                        spread(DiodeParameter.SATURATION_CURRENT),
                        spread(DiodeParameter.IDEALITY),
                        spread(DiodeParameter.SERIES_RESISTANCE),
                        spread(DiodeParameter.SHUNT_RESISTANCE)),
                unidentifiable());
    }

    private double value(DiodeParameter parameter) {
        return fitted(parameter).value() / (parameter == DiodeParameter.IDEALITY ? cellsInSeries : 1);
    }

    /** The logarithm of a parameter is what the points tell, so its interval is one of factors. */
    private Spread spread(DiodeParameter parameter) {
        var value = value(parameter);
        var log = Math.min(WIDEST_LOG, fitted(parameter).uncertaintyOfLog());
        var factor = Math.exp(Math.min(WIDEST_LOG, Estimate.COVERAGE_95 * log));
        return new Spread(value * log, value / factor, value * factor);
    }

    private List<String> unidentifiable() {
        return Arrays.stream(DiodeParameter.values())
                .filter(parameter -> !fitted(parameter).identifiable())
                .map(FittedDiodes::name)
                .toList();
    }

    private FittedParameter fitted(DiodeParameter parameter) {
        return Objects.requireNonNull(parameters.get(parameter));
    }

    private static String name(DiodeParameter parameter) {
        return switch (parameter) {
            case PHOTOCURRENT -> "photocurrentA";
            case SATURATION_CURRENT -> "saturationCurrentA";
            case IDEALITY -> "idealityFactor";
            case SERIES_RESISTANCE -> "seriesResistanceOhm";
            case SHUNT_RESISTANCE -> "shuntResistanceOhm";
        };
    }
}
