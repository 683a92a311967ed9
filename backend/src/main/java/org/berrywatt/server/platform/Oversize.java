package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.jspecify.annotations.Nullable;
import org.springframework.util.StreamUtils;

/** Thrown while reading a body that goes on past the limit. */
@SuppressWarnings("serial")
final class Oversize extends IOException {

    static final int LIMIT_KIB = 64;
    static final int LIMIT_BYTES = LIMIT_KIB * 1024;

    private static final long REST_TAKEN_BYTES = 32L * 1024 * 1024;

    Oversize() {
        super("request body longer than " + LIMIT_KIB + " KiB");
    }

    static Refusal refusal() {
        return Refusal.of(ProblemCode.REQUEST_TOO_LARGE).limit(LIMIT_KIB + " KB");
    }

    /**
     * Takes in what is left of a body and throws it away: a browser reads the answer only after it has sent its whole
     * request. Beyond a moderate rest the connection is cut.
     */
    static void takeRest(InputStream body) throws IOException {
        StreamUtils.copyRange(body, OutputStream.nullOutputStream(), 0, REST_TAKEN_BYTES - 1);
    }

    static boolean causedBy(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(Oversize.class::isInstance);
    }
}
