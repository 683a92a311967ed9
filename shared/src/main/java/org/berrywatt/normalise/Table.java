package org.berrywatt.normalise;

/**
 * A function in even steps, straight in between and beyond its ends: what takes a solved curve at each call would take ten
 * thousand of them for one interval.
 */
final class Table {
    private final double start;
    private final double step;
    private final double[] values;

    /**
     * A table.
     *
     * @param values at start, start + step ..., at least two
     */
    Table(double start, double step, double[] values) {
        this.start = start;
        this.step = step;
        this.values = values.clone();
    }

    static Table constant(double value) {
        return new Table(0, 1, new double[] {value, value});
    }

    double at(double x) {
        var position = (x - start) / step;
        var below = (int) Math.max(0, Math.min(values.length - 2, Math.floor(position)));
        return values[below] + (position - below) * (values[below + 1] - values[below]);
    }
}
