package org.berrywatt.server.platform;

import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What a problem's {@code type} leads to: the kind of problem in general, its placeholders unfilled. */
@RestController
@RequestMapping("/api/problems")
class ProblemController {

    record Kind(String code, int status, String sentence, String wayOut) {}

    private final Texts texts;

    ProblemController(Texts texts) {
        this.texts = texts;
    }

    @GetMapping("/{code}")
    Kind kind(@PathVariable String code) {
        return Stream.of(ProblemCode.values())
                .filter(known -> known.code().equals(code))
                .findFirst()
                .map(this::describe)
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private Kind describe(ProblemCode code) {
        var key = "problem." + code.code();
        return new Kind(code.code(), ProblemStatus.of(code).value(), texts.say(key), texts.say(key + ".wayOut"));
    }
}
