package org.berrywatt.normalise;

import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** A quantity of the measurement model as a function of the values of its inputs. */
@FunctionalInterface
interface Term extends ToDoubleFunction<double[]> {
    double in(double[] values);

    static Term constant(double value) {
        return values -> value;
    }

    @Override
    default double applyAsDouble(double[] values) {
        return in(values);
    }

    default Term plus(Term other) {
        return values -> in(values) + other.in(values);
    }

    default Term minus(Term other) {
        return values -> in(values) - other.in(values);
    }

    default Term times(Term other) {
        return values -> in(values) * other.in(values);
    }

    default Term over(Term other) {
        return values -> in(values) / other.in(values);
    }

    default Term then(DoubleUnaryOperator function) {
        return values -> function.applyAsDouble(in(values));
    }

    /** Never below 0, for quantities that cannot be. */
    default Term atLeastZero() {
        return then(value -> Math.max(0, value));
    }
}
