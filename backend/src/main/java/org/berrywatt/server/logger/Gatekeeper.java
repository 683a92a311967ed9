package org.berrywatt.server.logger;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Throttle;
import org.berrywatt.server.access.Token;
import org.berrywatt.server.platform.Refusal;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;

/** Knows a device by its token (RFC 6750), slows down guesses, and holds each device to a pace. No cookie counts here. */
@Component
class Gatekeeper {

    private static final int AT_ONE_GO = 60;
    private static final Duration PER_READING = Duration.ofSeconds(1);

    /** The characters of a token as RFC 6750 allows them, of the length that ours have. */
    private static final Pattern BEARER = Pattern.compile("(?i:Bearer) +([\\w-]{43})");

    private final DeviceStore store;
    private final Throttle throttle;
    private final Cache<UUID, Bucket> paces = Caffeine.newBuilder()
            .maximumSize(10_000)
            .expireAfterAccess(Duration.ofMinutes(10))
            .build();

    Gatekeeper(DeviceStore store, Throttle throttle) {
        this.store = store;
        this.throttle = throttle;
    }

    /**
     * The device that sends a request.
     *
     * @throws Refusal {@code logger.token} for a missing, wrong or revoked one, {@code access.slowDown} after too many of those
     *     from one address, {@code logger.tooMany} over its pace
     */
    Device admit(HttpServletRequest request) {
        var device = throttle.guardDevice(request, () -> known(request));
        var pace = paces.get(device.id(), id -> bucket());
        var probe = pace.tryConsumeAndReturnRemaining(1);
        if (!probe.isConsumed()) {
            throw Refusal.of(ProblemCode.LOGGER_TOO_MANY)
                    .limit(AT_ONE_GO)
                    .with(
                            "seconds",
                            Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1);
        }
        return device;
    }

    private Device known(HttpServletRequest request) {
        return Optional.ofNullable(request.getHeader(HttpHeaders.AUTHORIZATION))
                .map(BEARER::matcher)
                .filter(matcher -> matcher.matches())
                .flatMap(matcher -> store.ofToken(new Token(matcher.group(1)).hash()))
                .orElseThrow(() -> Refusal.of(ProblemCode.LOGGER_TOKEN));
    }

    private static Bucket bucket() {
        return Bucket.builder()
                .addLimit(bandwidth -> bandwidth.capacity(AT_ONE_GO).refillGreedy(1, PER_READING))
                .build();
    }
}
