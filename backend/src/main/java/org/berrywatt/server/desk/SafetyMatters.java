package org.berrywatt.server.desk;

import static java.util.stream.Collectors.groupingBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.SignOffAnswer;
import org.berrywatt.safety.Hazards;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;

/** Teams that are at a step with a hazard for which nobody has signed them off; one line per zone. */
final class SafetyMatters {

    private SafetyMatters() {}

    private record Open(Zone zone, UUID teamId, Instant since) {}

    static Stream<Matter> of(DeskRecord record) {
        if (!record.day().entryOpen()) {
            return Stream.empty();
        }
        Map<Zone, List<Open>> byZone = record.cells().stream()
                .filter(cell -> cell.failure().isEmpty())
                .flatMap(cell -> open(cell, record))
                .collect(groupingBy(Open::zone));
        return byZone.entrySet().stream().map(zone -> matter(zone.getKey(), zone.getValue()));
    }

    private static Stream<Open> open(Cell cell, DeskRecord record) {
        Optional<Stage> stage = NextStage.of(cell).flatMap(Stage::of);
        return stage.stream()
                .flatMap(it -> Hazards.gatesOf(it, cell.levels()).stream())
                .filter(zone -> !isSignedOff(cell.teamId(), zone, record))
                .map(zone -> new Open(zone, cell.teamId(), reachedAt(cell)));
    }

    private static boolean isSignedOff(UUID teamId, Zone zone, DeskRecord record) {
        return record.signOffs().stream()
                .filter(signOff ->
                        signOff.teamId().equals(teamId) && signOff.zone().equals(zone.key()))
                .anyMatch(signOff -> holds(signOff, record.now()));
    }

    private static boolean holds(SignOffAnswer signOff, Instant now) {
        Instant withdrawnAt = signOff.withdrawnAt();
        return now.isBefore(signOff.validUntil()) && (withdrawnAt == null || now.isBefore(withdrawnAt));
    }

    /** Named by its teams, so that it comes back at once, also when put off, if another team gets there. */
    private static Matter matter(Zone zone, List<Open> open) {
        List<UUID> teams = open.stream().map(Open::teamId).distinct().sorted().toList();
        Instant since =
                open.stream().map(Open::since).min(Comparator.naturalOrder()).orElseThrow();
        String name = zone.key() + teams.stream().map(UUID::toString).collect(Collectors.joining());
        return new Matter(
                Kind.UNSIGNED,
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                teams.size() == 1 ? teams.get(0) : null,
                null,
                null,
                since,
                Map.of("zone", "catalogue.zone." + zone.key(), "teams", teams.size()),
                null);
    }

    private static Instant reachedAt(Cell cell) {
        return cell.outcomes().stream()
                .map(StageOutcome::acceptedAt)
                .max(Comparator.naturalOrder())
                .orElse(cell.registeredAt());
    }
}
