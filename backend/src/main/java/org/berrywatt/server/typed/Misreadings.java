package org.berrywatt.server.typed;

import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Slip;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.server.platform.Refusal;

/** Refusals of typed numbers that cannot be read, or not in one way only. */
final class Misreadings {

    private Misreadings() {}

    static Refusal refusal(String path, Typed typed, Misunderstood<?> read) {
        var value = read.value().isEmpty() ? typed.text() : read.value();
        return Refusal.of(code(read.slip()))
                .field(path)
                .value(Words.excerpt(String.valueOf(value)))
                .limit(read.expected());
    }

    static Refusal ambiguous(String path, Typed typed, List<Amount> meanings) {
        return Refusal.of(ProblemCode.QUANTITY_AMBIGUOUS)
                .field(path)
                .value(Words.excerpt(typed.text()))
                .choices(meanings.stream()
                        .map(meaning -> new Typed(meaning.text(), meaning.unitKey()))
                        .toList());
    }

    private static ProblemCode code(Slip slip) {
        return switch (slip) {
            case EMPTY -> ProblemCode.QUANTITY_EMPTY;
            case NOT_A_NUMBER -> ProblemCode.QUANTITY_NOT_A_NUMBER;
            case UNKNOWN_UNIT -> ProblemCode.QUANTITY_UNKNOWN_UNIT;
            case WRONG_UNIT -> ProblemCode.QUANTITY_WRONG_UNIT;
        };
    }
}
