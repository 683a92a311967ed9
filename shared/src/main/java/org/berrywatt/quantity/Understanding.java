package org.berrywatt.quantity;

import java.util.List;

/**
 * What a typed text means: one thing, more than one, or nothing.
 *
 * @param <T> {@link Amount} or {@link Area}
 */
public sealed interface Understanding<T> {

    /** The text means this. */
    record Understood<T>(T meaning) implements Understanding<T> {}

    /** The text means one of these, two or more; only its writer knows which. */
    record Ambiguous<T>(List<T> meanings) implements Understanding<T> {}

    /**
     * The text cannot be read.
     *
     * @param slip what is wrong
     * @param value the part that is wrong, as typed
     * @param expected what would be right: unit symbols, or numbers as examples
     */
    record Misunderstood<T>(Slip slip, String value, String expected) implements Understanding<T> {}
}
