package org.berrywatt.server.typed;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;

/** Corrections: new entries that name the one they replace. */
public final class Corrections {

    private Corrections() {}

    /**
     * Lets an entry be replaced once.
     *
     * @param entry the entry to replace, held by this transaction alone, so that a second correction waits for the first
     * @param replaced whether another entry replaces it by now
     * @throws Refusal {@code notFound} without the entry, {@code replaced.already}
     */
    public static void requireStanding(Optional<?> entry, BooleanSupplier replaced) {
        if (entry.isEmpty()) {
            throw Refusal.of(ProblemCode.NOT_FOUND).field("replaces");
        }
        if (replaced.getAsBoolean()) {
            throw Refusal.of(ProblemCode.REPLACED_ALREADY).field("replaces");
        }
    }
}
