package org.berrywatt.server.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.berrywatt.contract.ProblemCode;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses a body whose media type is none, and forms, which no door takes: a form's fields would pass for parameters of the
 * address, and be read where nobody expects them.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 11)
class BodyType extends OncePerRequestFilter {

    private final EarlyAnswer early;

    BodyType(EarlyAnswer early) {
        this.early = early;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isFit(request.getContentType())) {
            chain.doFilter(request, response);
        } else {
            early.refuse(request, response, Refusal.of(ProblemCode.REQUEST_MEDIA_TYPE));
        }
    }

    private static boolean isFit(@Nullable String type) {
        try {
            return type == null || isFit(MediaType.parseMediaType(type));
        } catch (InvalidMediaTypeException none) {
            return false;
        }
    }

    private static boolean isFit(MediaType type) {
        return type.isConcrete()
                && !type.getType().equals("multipart")
                && !type.equalsTypeAndSubtype(MediaType.APPLICATION_FORM_URLENCODED);
    }
}
