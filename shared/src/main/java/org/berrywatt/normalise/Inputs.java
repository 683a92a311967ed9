package org.berrywatt.normalise;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.uncertainty.Input;

/** The inputs of a measurement model in the making; each is read back by the place it was given. */
final class Inputs {
    private final List<Input> inputs = new ArrayList<>();

    /** Adds an input and returns where the model finds its value. */
    Term add(Input input) {
        inputs.add(input);
        var index = inputs.size() - 1;
        return values -> values[index];
    }

    /**
     * Adds a quantity that cannot be 0 or below and returns its logarithm: a normal deviation z stands for the factor
     * exp(z u/x), which to first order is 1 + z u/x. However poorly it is known, it stays positive.
     */
    Term addLogarithm(Input input) {
        var value = input.value();
        var logarithm = Math.log(value);
        return add(input).then(drawn -> logarithm + (drawn - value) / value);
    }

    /** Adds what a meter showed: the value within its accuracy statement, and the digit that cannot be seen. */
    Term add(String name, Shown shown, String unit) {
        return add(accuracy(name, shown, unit), name, shown, unit);
    }

    /** The same, read with a meter whose error moves all its readings alike. */
    Term add(String name, Shown shown, String unit, String meter) {
        return add(accuracy(name, shown, unit).sharedBy("meter." + meter + "." + unit), name, shown, unit);
    }

    private static Input accuracy(String name, Shown shown, String unit) {
        return Input.rectangular("input." + name, shown.value(), unit, shown.accuracyHalfWidth());
    }

    private Term add(Input accuracy, String name, Shown shown, String unit) {
        return add(accuracy).plus(add(Input.rectangular("input." + name + "Digit", 0, unit, shown.resolution() / 2)));
    }

    List<Input> list() {
        return List.copyOf(inputs);
    }
}
