package org.berrywatt.server;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.SweepPoint;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.CellWork;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDayChanges;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.light.ControlCells;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.team.Teams;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;

/** A lab day of a test's own, entered through the features' doors at times of the test's choosing. */
public final class Rehearsal {

    public static final Caller.Teacher TEACHER = new Caller.Teacher(UUID.randomUUID(), "Rehearsal");
    public static final Instant NOON = Instant.parse("2026-05-05T12:00:00Z");

    public final UUID labDayId = UUID.randomUUID();
    private final ApplicationContext server;
    private final Readings readings;
    private Instant now = NOON;
    private Caller reader = TEACHER;

    public Rehearsal(ApplicationContext server) {
        this.server = server;
        this.readings = server.getBean(Readings.class);
        server.getBean(LabDays.class).put(labDayId, labDay("medianOfDeclared"), TEACHER, now);
    }

    /** Ranks the day by another rule from now on. */
    public Rehearsal rule(String key) {
        var version = server.getBean(LabDays.class).show(labDayId, TEACHER).version();
        server.getBean(LabDayChanges.class).edit(labDayId, labDay(key), version, TEACHER, now);
        return this;
    }

    /** Chooses the day's control cell. */
    public Rehearsal control(UUID cellId) {
        server.getBean(ControlCells.class).choose(labDayId, new ControlCellRequest(cellId), TEACHER, now);
        return this;
    }

    /** Sets the clock of the entries that follow. */
    public Rehearsal minute(int afterNoon) {
        now = NOON.plus(afterNoon, ChronoUnit.MINUTES);
        return this;
    }

    /** Sets who takes the readings that follow. */
    public Rehearsal readBy(Caller person) {
        reader = person;
        return this;
    }

    private static LabDayRequest labDay(String rule) {
        return new LabDayRequest(
                "Rehearsal",
                LocalDate.of(2026, 5, 5),
                new Typed("1000 W/m2", null),
                new Typed("4 cm2", null),
                rule,
                3,
                false);
    }

    public UUID team(String name) {
        UUID id = UUID.randomUUID();
        server.getBean(Teams.class).put(id, new TeamRequest(labDayId, null, name), TEACHER, now);
        return id;
    }

    /** A station in full sun, read in W/m2 by a silicon cell. */
    public UUID sunnyStation(String name) {
        return station(name, "sun", "referenceCell");
    }

    /** A station under a lamp, read by an instrument; keys of the science. */
    public UUID station(String name, String lamp, String instrument) {
        UUID id = UUID.randomUUID();
        var request = new StationRequest(labDayId, name, lamp, instrument, null, null);
        server.getBean(Stations.class).put(id, request, TEACHER, now);
        return id;
    }

    public UUID light(UUID stationId, String reading) {
        return light(stationId, reading, null);
    }

    /** A reading of a station's light that corrects another. */
    public UUID light(UUID stationId, String reading, @Nullable UUID replaces) {
        UUID id = UUID.randomUUID();
        var request = new IrradianceRequest(stationId, new Typed(reading, null), replaces, now);
        server.getBean(Stations.class).putIrradiance(id, request, TEACHER, now);
        return id;
    }

    /** A cell; its area is null while nobody measured it. */
    public UUID cell(UUID teamId, String label, @Nullable String area, BuildValue... recipe) {
        UUID id = UUID.randomUUID();
        var request = new CellRequest(teamId, label, List.of(recipe), area == null ? null : new Typed(area, null), now);
        server.getBean(Cells.class).put(id, request, TEACHER, now);
        return id;
    }

    public void passed(UUID cellId, String stage) {
        var request = new OutcomeRequest(cellId, stage, true, null, "As rehearsed", null, now);
        server.getBean(Cells.class).putOutcome(UUID.randomUUID(), request, TEACHER, now);
    }

    /** Signs a team off for a zone for 90 minutes. */
    public void signedOff(UUID teamId, Zone zone) {
        var request = new SignOffRequest(teamId, zone.key(), zone.points(), 90, null);
        server.getBean(Safety.class).putSignOff(UUID.randomUUID(), request, TEACHER, now);
    }

    public void failure(UUID cellId, String stage, String failure) {
        var request = new OutcomeRequest(cellId, stage, false, failure, null, null, now);
        server.getBean(Cells.class).putOutcome(UUID.randomUUID(), request, TEACHER, now);
    }

    /** New electrolyte in a cell. */
    public void refill(UUID cellId) {
        server.getBean(CellWork.class)
                .put(UUID.randomUUID(), new CellEventRequest(cellId, "refill", null, now), TEACHER, now);
    }

    public UUID dark(UUID cellId, String voltage, String current) {
        return reading(cellId, "dark", null, voltage, current, null);
    }

    /** A dark check with the leads one way, then swapped. */
    public UUID darkBothWays(UUID cellId, List<String> straight, List<String> swapped) {
        UUID id = UUID.randomUUID();
        var request = new ReadingRequest(
                cellId,
                "dark",
                null,
                typed(straight.get(0)),
                typed(straight.get(1)),
                typed(swapped.get(0)),
                typed(swapped.get(1)),
                null,
                true,
                null,
                null,
                now);
        readings.put(id, request, reader, now);
        return id;
    }

    public UUID lit(UUID cellId, UUID stationId, String voltage, String current) {
        return reading(cellId, "light", stationId, voltage, current, null);
    }

    /** A sweep by rows of load, voltage. */
    public UUID sweep(UUID cellId, UUID stationId, String[]... rows) {
        List<SweepPoint> points = List.of(rows).stream()
                .map(row -> new SweepPoint(new Typed(row[0], null), new Typed(row[1], null), null))
                .toList();
        return reading(cellId, "sweep", stationId, null, null, points);
    }

    /** Currents, covered and open in turn. */
    public UUID toggles(UUID cellId, UUID stationId, String... currents) {
        List<SweepPoint> points = List.of(currents).stream()
                .map(current -> new SweepPoint(null, null, new Typed(current, null)))
                .toList();
        return reading(cellId, "toggles", stationId, null, null, points);
    }

    private UUID reading(
            UUID cellId,
            String kind,
            @Nullable UUID stationId,
            @Nullable String voltage,
            @Nullable String current,
            @Nullable List<SweepPoint> points) {
        UUID id = UUID.randomUUID();
        var request = new ReadingRequest(
                cellId, kind, stationId, typed(voltage), typed(current), null, null, points, true, null, null, now);
        readings.put(id, request, reader, now);
        return id;
    }

    private static @Nullable Typed typed(@Nullable String text) {
        return text == null ? null : new Typed(text, null);
    }
}
