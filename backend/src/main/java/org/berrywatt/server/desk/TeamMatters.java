package org.berrywatt.server.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;
import org.berrywatt.server.lesson.Phone;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.server.team.Team;

/** Teams of which neither an entry nor a phone was heard for long while entry is open. */
final class TeamMatters {

    /** A team at work enters something every quarter of an hour (common practice, no source). */
    private static final Duration SILENT = Duration.ofMinutes(20);

    /** Baking and soaking take up to 80 minutes, in which there is nothing to enter (common practice, no source). */
    private static final Duration SILENT_WHILE_WAITING = Duration.ofMinutes(90);

    /** Then the lesson is over rather than every team stuck. */
    private static final Duration QUIET = Duration.ofHours(2);

    /** A team that was last heard of longer ago was here for another lesson (common practice, no source). */
    private static final Duration ANOTHER_LESSON = Duration.ofHours(8);

    private static final Set<String> LONG_STAGES = Set.of("bake", "dye");

    private TeamMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        if (!record.day().entryOpen() || record.teams().isEmpty()) {
            return Stream.empty();
        }
        Instant last = record.teams().stream()
                .map(team -> lastSign(team, record))
                .max(Instant::compareTo)
                .orElseThrow();
        return age(last, record).compareTo(QUIET) > 0 ? quiet(last, record) : silent(record);
    }

    private static Stream<Matter> quiet(Instant last, DeskRecord record) {
        long hours = age(last, record).toHours();
        return Stream.of(
                new Matter(Kind.QUIET, record.day().id(), null, null, null, last, Map.of("hours", hours), null));
    }

    private static Stream<Matter> silent(DeskRecord record) {
        return record.teams().stream()
                .filter(team -> isMissed(age(lastSign(team, record), record), patience(team, record)))
                .map(team -> silent(team, lastSign(team, record), record));
    }

    private static boolean isMissed(Duration age, Duration patience) {
        return age.compareTo(patience) > 0 && age.compareTo(ANOTHER_LESSON) < 0;
    }

    private static Matter silent(Team team, Instant last, DeskRecord record) {
        Map<String, Object> values = Map.of("minutes", age(last, record).toMinutes());
        return Matter.ofTeam(Kind.SILENT, team.id(), last, values);
    }

    private static Duration patience(Team team, DeskRecord record) {
        return record.cellsOf(team).stream().anyMatch(TeamMatters::waitsForHeatOrDye) ? SILENT_WHILE_WAITING : SILENT;
    }

    private static boolean waitsForHeatOrDye(Cell cell) {
        return cell.failure().isEmpty()
                && NextStage.of(cell).filter(LONG_STAGES::contains).isPresent();
    }

    private static Duration age(Instant last, DeskRecord record) {
        return Duration.between(last, record.now());
    }

    private static Instant lastSign(Team team, DeskRecord record) {
        List<Cell> cells = record.cellsOf(team);
        Stream<Instant> built = cells.stream()
                .flatMap(cell -> Stream.concat(
                        Stream.of(cell.registeredAt()), cell.outcomes().stream().map(StageOutcome::acceptedAt)));
        Stream<Instant> read =
                cells.stream().flatMap(cell -> record.readingsOf(cell).stream()).map(RecordedReading::readAt);
        Stream<Instant> heard = record.phones().stream()
                .filter(phone -> phone.teamId().equals(team.id()))
                .map(Phone::seenAt);
        return Stream.of(
                        built,
                        read,
                        heard,
                        Stream.of(Objects.requireNonNull(record.madeAt().get(team.id()))))
                .flatMap(it -> it)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}
