package org.berrywatt.contract;

import java.net.URI;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A problem detail (RFC 9457) with the project's extensions.
 *
 * @param detail a whole sentence with value, limit and way out
 * @param code stable code, see {@link ProblemCode}
 * @param field path of the refused field, for example {@code "voltage"} or {@code "points[3].load"}
 * @param value what was given
 * @param limit what is accepted, ranges in interval notation
 * @param wayOut what to do next
 * @param choices readings to choose from when a number is ambiguous
 */
public record Problem(
        URI type,
        String title,
        int status,
        String detail,
        String code,
        @Nullable String field,
        @Nullable String value,
        @Nullable String limit,
        @Nullable String wayOut,
        List<Typed> choices) {}
