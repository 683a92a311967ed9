package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.ResponseCookie;
import org.springframework.web.util.WebUtils;

/** The cookie with a pass: out of reach for scripts and for other sites' pages. */
final class PassCookie {

    static final String NAME = "berrywatt-pass";

    private PassCookie() {}

    static Optional<Token> of(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, NAME)).map(cookie -> new Token(cookie.getValue()));
    }

    static ResponseCookie holding(Token token, Duration validity, HttpServletRequest request) {
        return cookie(token.text(), validity, request);
    }

    static ResponseCookie empty(HttpServletRequest request) {
        return cookie("", Duration.ZERO, request);
    }

    private static ResponseCookie cookie(String value, Duration validity, HttpServletRequest request) {
        return ResponseCookie.from(NAME, value)
                .path("/")
                .httpOnly(true)
                .sameSite("Strict")
                .secure(request.isSecure())
                .maxAge(validity)
                .build();
    }
}
