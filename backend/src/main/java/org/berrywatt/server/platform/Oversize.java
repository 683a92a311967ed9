package org.berrywatt.server.platform;

import java.io.IOException;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.jspecify.annotations.Nullable;

/** Thrown while reading a body that goes on past the limit. */
@SuppressWarnings("serial")
final class Oversize extends IOException {

    static final int LIMIT_KIB = 64;
    static final int LIMIT_BYTES = LIMIT_KIB * 1024;

    Oversize() {
        super("request body longer than " + LIMIT_KIB + " KiB");
    }

    static Refusal refusal() {
        return Refusal.of(ProblemCode.REQUEST_TOO_LARGE).limit(LIMIT_KIB + " KB");
    }

    static boolean causedBy(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(Oversize.class::isInstance);
    }
}
