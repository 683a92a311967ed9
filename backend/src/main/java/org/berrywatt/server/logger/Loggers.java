package org.berrywatt.server.logger;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LoggerAnswer;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Token;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Devices as a teacher lets them in and out; each call is for teachers alone. */
@Service
class Loggers {

    private static final int LONGEST_NAME = 40;

    /** More than a school's benches and lamps. */
    private static final int MOST = 60;

    private final DeviceStore store;
    private final LabDays days;
    private final Teams teams;
    private final Stations stations;

    Loggers(DeviceStore store, LabDays days, Teams teams, Stations stations) {
        this.store = store;
        this.days = days;
        this.teams = teams;
        this.stations = stations;
    }

    /**
     * Lets a device in.
     *
     * @return the device with its token, which nobody can be told again
     * @throws Refusal {@code notFound} for a team or station of another day, {@code value.missing} for both or neither,
     *     {@code logger.full}, or when the name is refused
     */
    @Transactional
    public LoggerAnswer make(UUID labDayId, LoggerRequest request, Caller caller, Instant now) {
        var teacher = caller.requireTeacher();
        days.holdAlone(labDayId);
        requireRoom(labDayId);
        requireOfDay(labDayId, request);
        var name = Words.line("name", request.name(), LONGEST_NAME);
        var device = new Device(
                UUID.randomUUID(), labDayId, request.teamId(), request.stationId(), name, teacher, now, null, null);
        var token = Token.random();
        store.add(device, token.hash());
        return device.answer(token.text());
    }

    /** The devices of a day in the order made, revoked ones among them. */
    @Transactional(readOnly = true)
    public List<LoggerAnswer> list(UUID labDayId, Caller caller) {
        caller.requireTeacher();
        return store.ofLabDay(labDayId).stream()
                .map(device -> device.answer(null))
                .toList();
    }

    /** Takes a device's token back at once and for good; once more changes nothing. */
    @Transactional
    public LoggerAnswer revoke(UUID id, Caller caller, Instant now) {
        caller.requireTeacher();
        store.revoke(id, now);
        return store.find(id).map(device -> device.answer(null)).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private void requireRoom(UUID labDayId) {
        var there = store.ofLabDay(labDayId).stream()
                .filter(device -> device.revokedAt() == null)
                .count();
        if (there >= MOST) {
            throw Refusal.of(ProblemCode.LOGGER_FULL).value(there).limit(MOST);
        }
    }

    private void requireOfDay(UUID labDayId, LoggerRequest request) {
        var teamId = request.teamId();
        var stationId = request.stationId();
        if ((teamId == null) == (stationId == null)) {
            throw Refusal.of(ProblemCode.VALUE_MISSING).field(teamId == null ? "teamId" : "teamId or stationId alone");
        }
        var dayOfThing = teamId == null
                ? stations.labDayOf(Given.need("stationId", stationId))
                : teams.find(teamId).map(Team::labDayId);
        if (!dayOfThing.filter(labDayId::equals).isPresent()) {
            throw Refusal.of(ProblemCode.NOT_FOUND);
        }
    }
}
