package org.berrywatt.light;

/**
 * The straight line through points of known uncertainty by weighted least squares.
 *
 * <p>The uncertainty of the slope is the larger of what the points promise and what their scatter about the line shows, the
 * latter from three points on (ratio of Birge).
 *
 * @param slope change of y per x
 * @param slopeUncertainty standard uncertainty, in [0, ∞)
 */
record WeightedLine(double slope, double slopeUncertainty) {

    /**
     * The line.
     *
     * @param uncertainties standard uncertainties of y, each in (0, ∞)
     * @throws IllegalArgumentException when there are fewer than two different x
     */
    static WeightedLine through(double[] x, double[] y, double[] uncertainties) {
        var weights = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            weights[i] = 1 / (uncertainties[i] * uncertainties[i]);
        }
        var meanX = mean(x, weights);
        var meanY = mean(y, weights);
        var spread = codeviation(x, meanX, x, meanX, weights);
        if (!(spread > 0)) {
            throw new IllegalArgumentException("a line needs points at two different places or more");
        }
        var slope = codeviation(x, meanX, y, meanY, weights) / spread;
        var scatter = scatter(x, meanX, y, meanY, weights, slope);
        return new WeightedLine(slope, Math.sqrt(Math.max(1, scatter) / spread));
    }

    private static double mean(double[] values, double[] weights) {
        var sum = 0.0;
        var total = 0.0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * values[i];
            total += weights[i];
        }
        return sum / total;
    }

    private static double codeviation(double[] x, double meanX, double[] y, double meanY, double[] weights) {
        var sum = 0.0;
        for (int i = 0; i < x.length; i++) {
            sum += weights[i] * (x[i] - meanX) * (y[i] - meanY);
        }
        return sum;
    }

    /** Chi-squared per degree of freedom; 0 where two points leave none. */
    private static double scatter(double[] x, double meanX, double[] y, double meanY, double[] weights, double slope) {
        var sum = 0.0;
        for (int i = 0; i < x.length; i++) {
            var off = y[i] - meanY - slope * (x[i] - meanX);
            sum += weights[i] * off * off;
        }
        return x.length > 2 ? sum / (x.length - 2) : 0;
    }
}
