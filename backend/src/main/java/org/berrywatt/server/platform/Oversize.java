package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.util.StreamUtils;

/** Thrown while reading a body that goes on past the limit. */
@SuppressWarnings("serial")
final class Oversize extends IOException {

    private static final long REST_TAKEN_BYTES = 32L * 1024 * 1024;

    private final BodySize limit;

    Oversize(BodySize limit) {
        super("request body longer than " + limit.bytes() + " bytes");
        this.limit = limit;
    }

    Refusal refusal() {
        return limit.refusal();
    }

    /**
     * Takes in what is left of a body and throws it away: a browser reads the answer only after it has sent its whole
     * request. Beyond a moderate rest the connection is cut.
     */
    static void takeRest(InputStream body) throws IOException {
        StreamUtils.copyRange(body, OutputStream.nullOutputStream(), 0, REST_TAKEN_BYTES - 1);
    }

    /** What stands behind a failure, when it is this. */
    static Optional<Oversize> behind(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
                .filter(Oversize.class::isInstance)
                .map(Oversize.class::cast)
                .findFirst();
    }
}
