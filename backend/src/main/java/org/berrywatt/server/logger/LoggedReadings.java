package org.berrywatt.server.logger;

import static java.util.stream.Collectors.joining;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LoggedAnswer;
import org.berrywatt.contract.LoggedRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Readings that devices send; each goes where its team's, or the teacher's, would have gone. */
@Service
class LoggedReadings {

    private static final int LONGEST_ID = 64;
    private static final List<String> KINDS = List.of("dark", "light", "sweep");

    private final DeviceStore store;
    private final Teams teams;
    private final Cells cells;
    private final Stations stations;
    private final Readings readings;

    LoggedReadings(DeviceStore store, Teams teams, Cells cells, Stations stations, Readings readings) {
        this.store = store;
        this.teams = teams;
        this.cells = cells;
        this.stations = stations;
        this.readings = readings;
    }

    /**
     * Keeps a reading, once however often it comes.
     *
     * @throws Refusal {@code logger.nameUnknown} for a cell of another team or a station of another day, {@code id.reused} for
     *     another reading under the same id, and as for a person's readings
     */
    @Transactional
    public LoggedAnswer take(Device device, LoggedRequest request, Instant now) {
        var id = Words.line("id", request.id(), LONGEST_ID);
        var entryId = UUID.nameUUIDFromBytes((device.id() + "\n" + id).getBytes(StandardCharsets.UTF_8));
        var acceptedAt =
                device.isOfTeam() ? ofCell(device, entryId, request, now) : ofStation(device, entryId, request, now);
        store.heard(device.id(), now);
        return new LoggedAnswer(entryId, acceptedAt);
    }

    private Instant ofStation(Device device, UUID entryId, LoggedRequest request, Instant now) {
        var light = new Typed(Given.need("light", request.light()), null);
        var entry = new IrradianceRequest(device.station(), light, null, now);
        return stations.putIrradiance(entryId, request, entry, device.teacher(), now)
                .acceptedAt();
    }

    private Instant ofCell(Device device, UUID entryId, LoggedRequest request, Instant now) {
        var team = teams.remaining(device.team()).orElseThrow();
        var own = cells.ofLabDay(device.labDayId()).stream()
                .filter(cell -> cell.teamId().equals(team.id()))
                .toList();
        var cell = named("cell", Given.need("cell", request.cell()), own, Cell::label);
        var entry = new ReadingRequest(
                cell.id(),
                Given.choice("kind", request.kind(), KINDS),
                station(device, request.station()),
                typed(request.voltage()),
                typed(request.current()),
                null,
                null,
                points(request.points()),
                Boolean.TRUE.equals(request.confirmed()),
                null,
                null,
                now);
        var caller = new Caller.TeamMember(team.id(), team.labDayId());
        return readings.put(entryId, request, entry, caller, now).acceptedAt();
    }

    private @Nullable UUID station(Device device, @Nullable String name) {
        return name == null
                ? null
                : named("station", name, stations.list(device.labDayId(), device.teacher()), StationAnswer::name)
                        .id();
    }

    private static <T> T named(String field, String name, List<T> among, Function<T, String> nameOf) {
        return among.stream()
                .filter(one -> Words.key(nameOf.apply(one)).equals(Words.key(name)))
                .findFirst()
                .orElseThrow(() -> Refusal.of(ProblemCode.LOGGER_NAME_UNKNOWN)
                        .field(field)
                        .value(Words.excerpt(name))
                        .limit(
                                among.isEmpty()
                                        ? "\u2013"
                                        : among.stream().map(nameOf).collect(joining(", "))));
    }

    private static @Nullable List<SweepPoint> points(@Nullable List<LoggedRequest.Point> points) {
        return points == null
                ? null
                : points.stream()
                        .map(point ->
                                new SweepPoint(typed(point.load()), typed(point.voltage()), typed(point.current())))
                        .toList();
    }

    private static @Nullable Typed typed(@Nullable String text) {
        return text == null ? null : new Typed(text, null);
    }
}
