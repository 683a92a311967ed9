package org.berrywatt.statistics;

import java.util.Optional;

/**
 * What a sample answers: a value, or why it gives none.
 *
 * @param <T> the value's type
 */
public sealed interface Answer<T> {

    /** The value when there is one. */
    Optional<T> value();

    /** A computed value. */
    record Given<T>(T given) implements Answer<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(given);
        }
    }

    /** No value, and the reason. */
    record Withheld<T>(Reason reason) implements Answer<T> {
        @Override
        public Optional<T> value() {
            return Optional.empty();
        }
    }

    /** Why a sample gives no answer. */
    enum Reason {
        /** A number is NaN or infinite. */
        NOT_FINITE,
        /** Fewer than three observations. */
        TOO_FEW,
        /** Fewer than two groups hold observations. */
        ONE_GROUP,
        /** All numbers are the same, so there is no order to speak of. */
        ALL_EQUAL,
        /** More pairs than can be gone through. */
        TOO_MANY,
        /** One explaining column is a combination of the others. */
        DEPENDENT_COLUMNS
    }
}
