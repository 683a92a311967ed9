package org.berrywatt.server.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Refuses a body over its {@link BodySize}: at once when the length is announced, otherwise while it is read. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 10)
class BodyLimit extends OncePerRequestFilter {

    private final EarlyAnswer early;

    BodyLimit(EarlyAnswer early) {
        this.early = early;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var limit = BodySize.of(request);
        if (request.getContentLengthLong() > limit.bytes()) {
            Oversize.takeRest(request.getInputStream());
            early.refuse(request, response, limit.refusal());
        } else {
            chain.doFilter(new LimitedRequest(request, limit), response);
        }
    }
}
