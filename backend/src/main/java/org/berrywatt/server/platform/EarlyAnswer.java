package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;

/**
 * A refusal that leaves before the filters of the access have seen the request, and so without the headers that they give every
 * other answer. It carries no page, so that a browser need load nothing for it.
 */
@Component
public class EarlyAnswer {

    /** The headers, by name. */
    static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy", "default-src 'none'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cache-Control", "no-store");

    private final HandlerExceptionResolver problems;

    EarlyAnswer(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        this.problems = problems;
    }

    public void refuse(HttpServletRequest request, HttpServletResponse response, Refusal refusal) {
        HEADERS.forEach(response::setHeader);
        problems.resolveException(request, response, null, refusal);
    }
}
