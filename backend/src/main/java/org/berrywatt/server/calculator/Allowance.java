package org.berrywatt.server.calculator;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;

/**
 * How much an address may have calculated: enough for a class of thirty phones behind one address that all move a slider,
 * not enough to keep the server from its readings. Every request costs one, refused ones too; long ones cost more.
 */
@Component
class Allowance implements HandlerInterceptor {

    private static final int AT_ONE_GO = 1000;
    private static final int PER_SECOND = 100;

    private final Cache<String, Bucket> buckets = Caffeine.newBuilder()
            .maximumSize(100_000)
            .expireAfterAccess(Duration.ofMinutes(1))
            .build();

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        spend(request, 1);
        return true;
    }

    /** @throws Refusal {@code calculation.tooMany} when the address has spent its allowance */
    void spend(HttpServletRequest request, long cost) {
        var probe = buckets.get(request.getRemoteAddr(), address -> bucket()).tryConsumeAndReturnRemaining(cost);
        if (!probe.isConsumed()) {
            var wait = Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1;
            throw Refusal.of(ProblemCode.CALCULATION_TOO_MANY).with("seconds", wait);
        }
    }

    private static Bucket bucket() {
        return Bucket.builder()
                .addLimit(bandwidth -> bandwidth.capacity(AT_ONE_GO).refillGreedy(PER_SECOND, Duration.ofSeconds(1)))
                .build();
    }
}
