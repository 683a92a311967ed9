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

    /** Adds what a meter showed: the value within its accuracy statement, and the digit that cannot be seen. */
    Term add(String name, Shown shown, String unit) {
        var value = add(Input.rectangular("input." + name, shown.value(), unit, shown.accuracyHalfWidth()));
        var digit = add(Input.rectangular("input." + name + "Digit", 0, unit, shown.resolution() / 2));
        return values -> value.in(values) + digit.in(values);
    }

    List<Input> list() {
        return List.copyOf(inputs);
    }
}
