package org.berrywatt.server.platform;

import java.util.Objects;
import java.util.stream.Collectors;
import org.berrywatt.contract.ProblemCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DatabindException;

/** Requests that never reach a feature, in the project's codes. */
final class Unreadable {

    private Unreadable() {}

    /** Names the field where a JSON body stops making sense, when there is one. */
    static Refusal refusal(HttpMessageNotReadableException cause) {
        return Oversize.behind(cause).map(Oversize::refusal).orElseGet(() -> body(cause));
    }

    private static Refusal body(HttpMessageNotReadableException cause) {
        return cause.getCause() instanceof DatabindException mismatch
                        && !path(mismatch).isEmpty()
                ? Refusal.of(ProblemCode.REQUEST_UNREADABLE).field(path(mismatch))
                : Refusal.of(ProblemCode.REQUEST_UNREADABLE);
    }

    /** Speaks of an HTTP status that somebody else chose, in {@code [400, 599]}. */
    static Refusal refusal(int status) {
        return switch (status) {
            case 401 -> Refusal.of(ProblemCode.SIGN_IN_NEEDED);
            case 403 -> Refusal.of(ProblemCode.NOT_ALLOWED);
            case 404 -> Refusal.of(ProblemCode.NOT_FOUND);
            case 405 -> Refusal.of(ProblemCode.REQUEST_METHOD);
            case 406, 415 -> Refusal.of(ProblemCode.REQUEST_MEDIA_TYPE);
            case 413 -> BodySize.FORM.refusal();
            case 501, 505 ->
                Refusal.of(ProblemCode.REQUEST_UNREADABLE); // a version of HTTP or a coding that nobody asked for
            default -> Refusal.of(status < 500 ? ProblemCode.REQUEST_UNREADABLE : ProblemCode.INTERNAL);
        };
    }

    private static String path(DatabindException mismatch) {
        return mismatch.getPath().stream()
                .map(Unreadable::step)
                .collect(Collectors.joining())
                .replaceFirst("^\\.", "");
    }

    private static String step(JacksonException.Reference step) {
        return step.getIndex() >= 0 ? "[" + step.getIndex() + "]" : "." + Objects.toString(step.getPropertyName(), "");
    }
}
