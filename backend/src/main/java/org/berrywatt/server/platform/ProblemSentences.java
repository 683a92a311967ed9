package org.berrywatt.server.platform;

import java.net.URI;
import java.util.Map;
import org.berrywatt.contract.Problem;
import org.berrywatt.contract.ProblemCode;
import org.springframework.stereotype.Component;

/** Turns a refusal into the problem detail a person can read. */
@Component
public class ProblemSentences {

    private final Texts texts;

    ProblemSentences(Texts texts) {
        this.texts = texts;
    }

    /** What a request that was refused is answered with, in its language. */
    public Problem of(Refusal refusal) {
        var code = refusal.code();
        var status = ProblemStatus.of(code);
        var wayOut = wayOut(refusal);
        return new Problem(
                URI.create("/api/problems/" + code.code()),
                status.getReasonPhrase(),
                status.value(),
                sentence(code, refusal.values()) + " " + wayOut,
                code.code(),
                refusal.text("field"),
                refusal.text("value"),
                refusal.text("limit"),
                wayOut,
                refusal.choices());
    }

    /** A likely slip is named where one is known. */
    private String wayOut(Refusal refusal) {
        var key = "problem." + refusal.code().code() + ".wayOut";
        return texts.say(refusal.values().containsKey("likely") ? key + ".likely" : key, refusal.values());
    }

    private String sentence(ProblemCode code, Map<String, Object> values) {
        return texts.say("problem." + code.code(), values);
    }
}
