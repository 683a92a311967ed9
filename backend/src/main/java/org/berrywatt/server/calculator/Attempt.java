package org.berrywatt.server.calculator;

import java.util.function.Supplier;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.hipparchus.exception.MathRuntimeException;

/** A calculation on numbers that are allowed each for itself and may still not go together. */
final class Attempt {

    private Attempt() {}

    /** @throws Refusal {@code calculation.noResult} when the science finds no finite result; what the attempt refuses */
    static <A> A at(Supplier<A> calculation) {
        try {
            return calculation.get();
        } catch (IllegalArgumentException | ArithmeticException | MathRuntimeException noResult) {
            throw Refusal.of(ProblemCode.CALCULATION_NO_RESULT);
        }
    }
}
