package org.berrywatt.server.paper;

import static java.util.stream.Collectors.joining;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;

/** Things of one kind by their names on paper, without differences of case. */
final class Names {

    private static final int MOST_TOLD = 12;

    private final Map<String, UUID> ids = new HashMap<>();
    private final Map<String, String> written = new LinkedHashMap<>();

    void add(String name, UUID id) {
        ids.put(Words.key(name), id);
        written.put(Words.key(name), name);
    }

    Optional<UUID> find(String name) {
        return Optional.ofNullable(ids.get(Words.key(name)));
    }

    /** Says which there are. */
    Refusal unknown(String name) {
        var told = written.values().stream().limit(MOST_TOLD).collect(joining(", "));
        var limit = written.size() > MOST_TOLD ? told + " \u2026" : told;
        return Refusal.of(ProblemCode.PAPER_NAME_UNKNOWN)
                .value(Words.excerpt(name))
                .limit(written.isEmpty() ? "\u2013" : limit);
    }
}
