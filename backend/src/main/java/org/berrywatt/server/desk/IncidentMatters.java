package org.berrywatt.server.desk;

import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.contract.IncidentAnswer;

/** Incidents at which no teacher has looked yet; their words stay in the log, since the list may be on a projector. */
final class IncidentMatters {

    private IncidentMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return record.incidents().stream()
                .filter(incident -> incident.replacedBy() == null && incident.lookedAt() == null)
                .map(IncidentMatters::matter);
    }

    private static Matter matter(IncidentAnswer incident) {
        return new Matter(
                Kind.INCIDENT, incident.id(), incident.teamId(), null, null, incident.acceptedAt(), Map.of(), null);
    }
}
