package org.berrywatt.server.platform;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import java.util.regex.Pattern;
import org.berrywatt.contract.ProblemCode;

/** How much a request may bring. */
enum BodySize {
    /** What a person types. */
    FORM(64 * 1024, "64 KB"),
    /** Tables that a person filled in. */
    TABLES(8 * 1024 * 1024, "8 MB"),
    /** A file, at the doors that take one. */
    FILE(64 * 1024 * 1024, "64 MB");

    private static final Set<String> DOORS_FOR_FILES =
            Set.of("/api/archives", "/api/findings/table", "/api/findings/table/look");

    private static final Pattern DOOR_FOR_TABLES = Pattern.compile("/api/labdays/[^/]+/paper");

    private final int bytes;
    private final String words;

    BodySize(int bytes, String words) {
        this.bytes = bytes;
        this.words = words;
    }

    static BodySize of(HttpServletRequest request) {
        var door = request.getRequestURI();
        if (DOORS_FOR_FILES.contains(door)) {
            return FILE;
        }
        return DOOR_FOR_TABLES.matcher(door).matches() ? TABLES : FORM;
    }

    int bytes() {
        return bytes;
    }

    Refusal refusal() {
        return Refusal.of(ProblemCode.REQUEST_TOO_LARGE).limit(words);
    }
}
