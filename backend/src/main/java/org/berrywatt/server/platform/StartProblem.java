package org.berrywatt.server.platform;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Why the server cannot start, as a sentence {@code start.REASON} of the text catalogue. */
@SuppressWarnings("serial")
final class StartProblem extends RuntimeException {

    private final String key;
    private final Map<String, Object> values;

    StartProblem(String reason, Map<String, Object> values, @Nullable Throwable cause) {
        super(reason + " " + values, cause);
        this.key = "start." + reason;
        this.values = values;
    }

    StartProblem(String reason, Map<String, Object> values) {
        this(reason, values, null);
    }

    String sentence(Texts texts) {
        return texts.say(key, values);
    }
}
