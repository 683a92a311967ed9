package org.berrywatt.server.platform;

import java.util.Objects;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ProblemCode;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

/** Every failure of a request leaves as a problem detail with a stable code; none shows a stack trace. */
@RestControllerAdvice
class ProblemAdvice {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);
    private final ProblemSentences sentences;

    ProblemAdvice(ProblemSentences sentences) {
        this.sentences = sentences;
    }

    @ExceptionHandler
    ResponseEntity<Problem> refused(Refusal refusal) {
        var problem = sentences.of(refusal);
        return ResponseEntity.status(problem.status())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .headers(headers -> addHeaders(refusal, headers))
                .body(problem);
    }

    @ExceptionHandler
    ResponseEntity<Problem> unreadable(HttpMessageNotReadableException cause) {
        return refused(Unreadable.refusal(cause));
    }

    @ExceptionHandler
    ResponseEntity<Problem> tooLarge(Oversize cause) {
        return refused(cause.refusal());
    }

    @ExceptionHandler
    ResponseEntity<Problem> mistypedAddress(MethodArgumentTypeMismatchException cause) {
        return refused(Refusal.of(ProblemCode.NOT_FOUND));
    }

    @ExceptionHandler
    ResponseEntity<Problem> editedMeanwhile(OptimisticLockingFailureException cause) {
        return refused(Refusal.of(ProblemCode.EDITED_MEANWHILE));
    }

    @ExceptionHandler({DataAccessResourceFailureException.class, CannotCreateTransactionException.class})
    ResponseEntity<Problem> databaseAway(Exception cause) {
        return failedBelow(DatabaseFailure.of(cause).orElse(ProblemCode.UNAVAILABLE), cause);
    }

    private ResponseEntity<Problem> failedBelow(ProblemCode code, Exception cause) {
        var answer = refused(Refusal.of(code));
        LOG.warn("{} {}", Objects.requireNonNull(answer.getBody()).detail(), cause.getMessage());
        return answer;
    }

    @ExceptionHandler
    ResponseEntity<Problem> failed(Exception cause) {
        if (cause instanceof ErrorResponse known && known.getStatusCode().is4xxClientError()) {
            return withHeadersOf(
                    known, refused(Unreadable.refusal(known.getStatusCode().value())));
        }
        return DatabaseFailure.of(cause).map(code -> failedBelow(code, cause)).orElseGet(() -> unforeseen(cause));
    }

    private ResponseEntity<Problem> unforeseen(Exception cause) {
        LOG.error("A request failed in a way nobody foresaw", cause);
        return refused(Refusal.of(ProblemCode.INTERNAL));
    }

    private static ResponseEntity<Problem> withHeadersOf(ErrorResponse known, ResponseEntity<Problem> answer) {
        return ResponseEntity.status(answer.getStatusCode())
                .headers(known.getHeaders())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(answer.getBody());
    }

    private static void addHeaders(Refusal refusal, HttpHeaders headers) {
        switch (refusal.code()) {
            case SLOW_DOWN, CALCULATION_TOO_MANY, LOGGER_TOO_MANY ->
                headers.set(HttpHeaders.RETRY_AFTER, refusal.text("seconds"));
            case SIGN_IN_NEEDED, SIGN_IN_REFUSED -> headers.set(HttpHeaders.WWW_AUTHENTICATE, "Pass");
            case LOGGER_TOKEN -> headers.set(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
            default -> {}
        }
    }
}
