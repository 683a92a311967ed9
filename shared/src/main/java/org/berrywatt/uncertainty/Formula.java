package org.berrywatt.uncertainty;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** Measurement models known by name; their inputs x1, x2 ... in this order. */
public enum Formula implements ToDoubleFunction<double[]> {
    SUM("sum", "y = x1 + x2 + …", 2, Formula.MANY),
    DIFFERENCE("difference", "y = x1 − x2", 2, 2),
    MEAN("mean", "y = (x1 + x2 + …) / n", 2, Formula.MANY),
    PRODUCT("product", "y = x1 · x2 · …", 2, Formula.MANY),
    RATIO("ratio", "y = x1 / x2", 2, 2),
    /** Defined for x1 above 0. */
    POWER("power", "y = x1 ^ x2", 2, 2),
    /** The comparison loss of a microwave power meter (JCGM 101:2008, 9.4), uncorrelated. */
    SUM_OF_SQUARES("sumOfSquares", "y = x1² + x2²", 2, 2),
    /** Of a cell: power, area and irradiance. */
    EFFICIENCY("efficiency", "η = P / (A · G) = x1 / (x2 · x3)", 3, 3),
    /** Of a cell: fill factor, open-circuit voltage, short-circuit current and area. */
    POWER_DENSITY("powerDensity", "P/A = FF · Voc · Isc / A = x1 · x2 · x3 / x4", 4, 4),
    /** Length of an end gauge: standard, difference, expansion, its difference, temperature, its difference (JCGM 100:2008, H.1). */
    END_GAUGE("endGauge", "l = ls + d − ls · (δα · θ + αs · δθ) = x1 + x2 − x1 · (x4 · x5 + x3 · x6)", 6, 6),
    /**
     * A weight's deviation from 100 g in mg: reference, added weight, densities of air, weight and reference (JCGM 101:2008,
     * 9.3).
     */
    WEIGHT_IN_AIR("weightInAir", "δm = (x1 + x2) · (1 + (x3 − 1.2) · (1 / x4 − 1 / x5)) − 100 000", 5, 5);

    private static final int MANY = 12;

    private final String key;
    private final String symbols;
    private final int fewestInputs;
    private final int mostInputs;

    Formula(String key, String symbols, int fewestInputs, int mostInputs) {
        this.key = key;
        this.symbols = symbols;
        this.fewestInputs = fewestInputs;
        this.mostInputs = mostInputs;
    }

    public String key() {
        return key;
    }

    /** The formula as it is written. */
    public String symbols() {
        return symbols;
    }

    public int fewestInputs() {
        return fewestInputs;
    }

    public int mostInputs() {
        return mostInputs;
    }

    /** The result of as many inputs as the formula takes. */
    @Override
    public double applyAsDouble(double[] x) {
        return switch (this) {
            case SUM -> Arrays.stream(x).sum();
            case DIFFERENCE -> x[0] - x[1];
            case MEAN -> Arrays.stream(x).sum() / x.length;
            case PRODUCT -> Arrays.stream(x).reduce(1, (a, b) -> a * b);
            case RATIO -> x[0] / x[1];
            case POWER -> Math.pow(x[0], x[1]);
            case SUM_OF_SQUARES -> x[0] * x[0] + x[1] * x[1];
            case EFFICIENCY -> x[0] / (x[1] * x[2]);
            case POWER_DENSITY -> x[0] * x[1] * x[2] / x[3];
            case END_GAUGE -> x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]);
            case WEIGHT_IN_AIR -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        };
    }
}
