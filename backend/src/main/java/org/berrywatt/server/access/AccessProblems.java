package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Says in the project's words what the security filters refuse. */
@Component
class AccessProblems implements AuthenticationEntryPoint, AccessDeniedHandler {

    private final HandlerExceptionResolver problems;

    AccessProblems(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver problems) {
        this.problems = problems;
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException cause) {
        problems.resolveException(request, response, null, Refusal.of(ProblemCode.SIGN_IN_NEEDED));
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException cause) {
        var code = cause instanceof CsrfException ? ProblemCode.PAGE_OUTDATED : ProblemCode.NOT_ALLOWED;
        problems.resolveException(request, response, null, Refusal.of(code));
    }
}
