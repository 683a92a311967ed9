package org.berrywatt.server.safety;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toMap;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.IncidentAnswer;
import org.jspecify.annotations.Nullable;

/** The incidents of a day with what corrects what. */
final class IncidentLog {

    private final List<Incident> inOrder;
    private final Map<UUID, Incident> byId;

    /** @param inOrder every incident of the day, oldest first */
    IncidentLog(List<Incident> inOrder) {
        this.inOrder = inOrder;
        byId = inOrder.stream().collect(toMap(Incident::id, identity()));
    }

    List<IncidentAnswer> answers() {
        return inOrder.stream()
                .map(incident -> incident.answer(lookedAt(incident), replacementOf(incident)))
                .toList();
    }

    /** Whoever corrects what was looked at has seen it, too. */
    private @Nullable Instant lookedAt(Incident incident) {
        return wordings(incident)
                .map(Incident::lookedAt)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** The incident and what it corrects, the latest wording first. */
    private Stream<Incident> wordings(Incident incident) {
        return Stream.iterate(incident, Objects::nonNull, this::earlier);
    }

    private @Nullable Incident earlier(Incident incident) {
        var replaced = incident.replaces();
        return replaced == null ? null : byId.get(replaced);
    }

    private @Nullable UUID replacementOf(Incident incident) {
        return inOrder.stream()
                .filter(later -> incident.id().equals(later.replaces()))
                .map(Incident::id)
                .findFirst()
                .orElse(null);
    }
}
