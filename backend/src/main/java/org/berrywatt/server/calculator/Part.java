package org.berrywatt.server.calculator;

import java.util.function.Supplier;
import org.berrywatt.server.platform.Refusal;

/** A part of a request that is a request of its own elsewhere. */
final class Part {

    private Part() {}

    /** What the attempt gives; what it refuses is named by its path in the whole request. */
    static <A> A of(String name, Supplier<A> attempt) {
        try {
            return attempt.get();
        } catch (Refusal refused) {
            throw refused.field(name + "." + refused.values().get("field"));
        }
    }
}
