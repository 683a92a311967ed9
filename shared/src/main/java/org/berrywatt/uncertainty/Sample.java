package org.berrywatt.uncertainty;

import java.util.Arrays;

/**
 * The trials of a result put in order: what a Monte Carlo evaluation knows of it (JCGM 101:2008, 7.5 to 7.7).
 *
 * <p>Where an input is Student's t with two degrees of freedom or fewer, mean and standard deviation do not settle however many
 * the trials; the intervals do.
 */
public final class Sample {
    private final double[] ascending;
    private final Moments moments;

    private Sample(double[] ascending) {
        this.ascending = ascending;
        this.moments = Moments.of(ascending);
    }

    /**
     * A sample of trials in any order; the array is copied.
     *
     * @param trials at least two
     * @throws IllegalArgumentException when there are fewer than two
     * @throws ArithmeticException when one is not finite
     */
    public static Sample of(double[] trials) {
        if (trials.length < 2) {
            throw new IllegalArgumentException("a sample needs trials in [2, infinity), not " + trials.length);
        }
        double[] ascending = trials.clone();
        Arrays.sort(ascending);
        if (!Double.isFinite(ascending[0]) || !Double.isFinite(ascending[ascending.length - 1])) {
            throw new ArithmeticException("the model has no finite value in some of the trials");
        }
        return new Sample(ascending);
    }

    public int size() {
        return ascending.length;
    }

    public double mean() {
        return moments.mean();
    }

    /** Standard deviation of the trials, the standard uncertainty of the result. */
    public double standardDeviation() {
        return moments.standardDeviation();
    }

    /** The middle trial, or the mean of the two in the middle. */
    public double median() {
        return (ascending[(size() - 1) / 2] + ascending[size() / 2]) / 2;
    }

    /**
     * The shortest interval that holds a share of the trials, the lowest of equally short ones (JCGM 101:2008, 7.7.4).
     *
     * @param probability in (0, 1), with at least one trial left outside
     * @throws IllegalArgumentException when the probability is out of its range
     */
    public Interval shortestInterval(double probability) {
        int inside = inside(probability);
        int best = 0;
        for (int low = 1; low + inside < size(); low++) {
            if (width(low, inside) < width(best, inside)) {
                best = low;
            }
        }
        return new Interval(ascending[best], ascending[best + inside]);
    }

    /**
     * The interval that leaves as many trials below as above (JCGM 101:2008, 7.7.2 and 7.7.3).
     *
     * @param probability in (0, 1), with at least one trial left outside
     * @throws IllegalArgumentException when the probability is out of its range
     */
    public Interval symmetricInterval(double probability) {
        int inside = inside(probability);
        int low = (size() - inside + 1) / 2 - 1;
        return new Interval(ascending[low], ascending[low + inside]);
    }

    private double width(int low, int inside) {
        return ascending[low + inside] - ascending[low];
    }

    /** Steps from the lowest trial of an interval to its highest. */
    private int inside(double probability) {
        long inside = Math.round(probability * size());
        if (!(probability > 0 && probability < 1 && inside < size())) {
            throw new IllegalArgumentException("the probability of an interval of " + size()
                    + " trials must lie in (0, 1) and leave a trial outside, not " + probability);
        }
        return (int) inside;
    }
}
