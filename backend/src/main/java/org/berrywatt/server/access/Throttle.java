package org.berrywatt.server.access;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.function.Supplier;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;

/**
 * Slows down guessing of passwords and codes. Only wrong tries count: a whole class behind one address may join at once.
 *
 * <p>Kept in memory: a restart forgives, which a guesser cannot bring about.
 */
@Component
public class Throttle {

    /** Wrong tries at one go, and the time after which one more is allowed. */
    enum Limit {
        ADDRESS(30, Duration.ofSeconds(10)),
        ACCOUNT(10, Duration.ofSeconds(6)),
        /** Apart from people's: a device that nobody looks after must not keep a class behind its address out. */
        DEVICE(30, Duration.ofSeconds(10)),
        CODES(300, Duration.ofSeconds(1));

        private final int tries;
        private final Duration perTry;

        Limit(int tries, Duration perTry) {
            this.tries = tries;
            this.perTry = perTry;
        }

        /** How many wrong tries fit into a time. */
        long triesWithin(Duration time) {
            return tries + time.dividedBy(perTry);
        }

        private Bucket bucket() {
            return Bucket.builder()
                    .addLimit(bandwidth -> bandwidth.capacity(tries).refillGreedy(1, perTry))
                    .build();
        }
    }

    /** Whose attempt it is when nothing is known. */
    private static final String SOMEBODY = "somebody";

    private record Key(Limit limit, String name) {}

    private final Cache<Key, Bucket> buckets = Caffeine.newBuilder()
            .maximumSize(100_000)
            .expireAfterAccess(Duration.ofMinutes(10))
            .build();

    private final Journal journal;

    Throttle(Journal journal) {
        this.journal = journal;
    }

    /**
     * Makes an attempt from this request's address.
     *
     * @throws Refusal {@code access.slowDown} when too many attempts failed; whatever the attempt throws otherwise
     */
    public <A> A guard(HttpServletRequest request, Supplier<A> attempt) {
        return guard(request, SOMEBODY, attempt);
    }

    /**
     * The same for an attempt of which more is known.
     *
     * @param whom how it is told in the log
     */
    <A> A guard(HttpServletRequest request, String whom, Supplier<A> attempt) {
        return witnessed(request, whom, () -> guard(Limit.ADDRESS, request.getRemoteAddr(), attempt));
    }

    /**
     * The same for the attempt of a device to show who it is.
     *
     * @throws Refusal {@code access.slowDown}
     */
    public <A> A guardDevice(HttpServletRequest request, Supplier<A> attempt) {
        return witnessed(request, "a device", () -> guard(Limit.DEVICE, request.getRemoteAddr(), attempt));
    }

    /**
     * Tries a join code from this request's address. Since a code belongs to no account, wrong codes from all addresses together
     * are limited, too: whoever borrows many addresses gains little.
     *
     * @throws Refusal as {@link #guard(HttpServletRequest, Supplier)}
     */
    public <A> A guardCode(HttpServletRequest request, Supplier<A> attempt) {
        return guard(request, () -> guard(Limit.CODES, "", attempt));
    }

    /** How many wrong codes all addresses together may try within a time. */
    public static long codesWithin(Duration time) {
        return Limit.CODES.triesWithin(time);
    }

    <A> A guard(Limit limit, String name, Supplier<A> attempt) {
        var bucket = buckets.get(new Key(limit, name), key -> limit.bucket());
        var probe = bucket.tryConsumeAndReturnRemaining(1);
        if (!probe.isConsumed()) {
            throw slowDown(probe);
        }
        var answer = attempt.get();
        bucket.addTokens(1);
        return answer;
    }

    private <A> A witnessed(HttpServletRequest request, String whom, Supplier<A> attempt) {
        try {
            return attempt.get();
        } catch (Refusal refusal) {
            switch (refusal.code()) {
                case SIGN_IN_REFUSED, PASSWORD_WRONG, LOGGER_TOKEN ->
                    journal.tell(Journal.Event.REFUSED, whom, request);
                case SLOW_DOWN -> journal.tell(Journal.Event.SLOWED, whom, request);
                default -> {}
            }
            throw refusal;
        }
    }

    private static Refusal slowDown(ConsumptionProbe probe) {
        var wait = Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1;
        return Refusal.of(ProblemCode.SLOW_DOWN).with("seconds", wait);
    }
}
