package org.berrywatt.curve;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Which point of a refused sweep to look at first.
 *
 * @param taken in the order given
 */
record Suspects(List<SweepPoint> taken) {

    /** The first whose voltage or current is not finite. */
    @Nullable
    Integer notFinite() {
        return first(i -> !SweepDoor.isFinite(taken.get(i)));
    }

    /** The first that does not deliver power. */
    @Nullable
    Integer idle() {
        return first(i -> !taken.get(i).deliversPower());
    }

    /** The first at the load of an earlier one. */
    @Nullable
    Integer repeated() {
        var angles = AlongCurve.angles(taken);
        return first(i -> angles.subList(0, i).stream()
                .anyMatch(angle -> Math.abs(angle - angles.get(i)) <= AlongCurve.ONE_LOAD));
    }

    /** The one whose current rises most above that of the next lower voltage. */
    @Nullable
    Integer rising() {
        var byVoltage = IntStream.range(0, taken.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> taken.get(i).voltageV()))
                .toList();
        return IntStream.range(1, byVoltage.size())
                .filter(i -> riseA(byVoltage, i) > 0)
                .boxed()
                .max(Comparator.comparingDouble(i -> riseA(byVoltage, i)))
                .map(byVoltage::get)
                .orElse(null);
    }

    private double riseA(List<Integer> byVoltage, int i) {
        return taken.get(byVoltage.get(i)).currentA()
                - taken.get(byVoltage.get(i - 1)).currentA();
    }

    private @Nullable Integer first(IntPredicate suspicious) {
        var found = IntStream.range(0, taken.size()).filter(suspicious).findFirst();
        return found.isPresent() ? found.getAsInt() : null;
    }
}
