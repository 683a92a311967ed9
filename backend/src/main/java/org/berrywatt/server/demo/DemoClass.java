package org.berrywatt.server.demo;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.CellWork;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDayEdits;
import org.berrywatt.server.lesson.HeaterSlots;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.reading.SetAsides;
import org.berrywatt.server.safety.Incidents;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;

/** The invented class at its phones: enters through the doors that real people use, with their rights and no more. */
@Component
class DemoClass {

    /** A door as its facade opens it. */
    private interface Door<R> {
        void enter(UUID id, R request, Caller caller, Instant at);
    }

    private final Map<Class<?>, Door<Object>> doors = new HashMap<>();

    DemoClass(
            LabDayEdits labDays,
            Teams teams,
            Safety safety,
            Incidents incidents,
            Cells cells,
            CellWork work,
            Stations stations,
            Readings readings,
            SetAsides setAsides,
            HeaterSlots heaters) {
        open(LabDayRequest.class, labDays::put);
        open(TeamRequest.class, teams::put);
        open(StationRequest.class, stations::put);
        open(IrradianceRequest.class, stations::putIrradiance);
        open(SignOffRequest.class, safety::putSignOff);
        open(IncidentRequest.class, incidents::put);
        open(IncidentLook.class, (id, look, caller, at) -> incidents.look(id, caller, at));
        open(CellRequest.class, cells::put);
        open(OutcomeRequest.class, cells::putOutcome);
        open(HeaterSlotRequest.class, heaters::put);
        open(HeaterOutRequest.class, heaters::takeOut);
        open(CellEventRequest.class, work::put);
        open(ReadingRequest.class, readings::put);
        open(SetAsideRequest.class, setAsides::put);
    }

    /** @param teacher who enters what no team enters */
    void enter(Entry entry, UUID labDayId, Caller teacher) {
        UUID teamId = entry.teamId();
        Caller caller = teamId == null ? teacher : new Caller.TeamMember(teamId, labDayId);
        Objects.requireNonNull(doors.get(entry.request().getClass()))
                .enter(entry.id(), entry.request(), caller, entry.at());
    }

    private <R> void open(Class<R> request, Door<R> door) {
        doors.put(request, (id, body, caller, at) -> door.enter(id, request.cast(body), caller, at));
    }
}
