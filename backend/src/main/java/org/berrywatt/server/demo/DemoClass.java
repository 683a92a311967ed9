package org.berrywatt.server.demo;

import java.util.UUID;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.StationRequest;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.light.ControlCells;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.plan.Plans;
import org.berrywatt.server.reading.Readings;
import org.berrywatt.server.safety.Incidents;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.team.Teams;
import org.springframework.stereotype.Component;

/** The invented class at its phones: enters through the doors that real people use, with their rights and no more. */
@Component
class DemoClass {

    private final LabDays labDays;
    private final Teams teams;
    private final Safety safety;
    private final Incidents incidents;
    private final Cells cells;
    private final Stations stations;
    private final ControlCells controls;
    private final Readings readings;
    private final Plans plans;

    DemoClass(
            LabDays labDays,
            Teams teams,
            Safety safety,
            Incidents incidents,
            Cells cells,
            Stations stations,
            ControlCells controls,
            Readings readings,
            Plans plans) {
        this.labDays = labDays;
        this.teams = teams;
        this.safety = safety;
        this.incidents = incidents;
        this.cells = cells;
        this.stations = stations;
        this.controls = controls;
        this.readings = readings;
        this.plans = plans;
    }

    /** @param teacher who enters what no team enters */
    void enter(Entry entry, UUID labDayId, Caller teacher) {
        UUID teamId = entry.teamId();
        Caller caller = teamId == null ? teacher : new Caller.TeamMember(teamId, labDayId);
        if (!isOfPlan(entry, labDayId, caller)) {
            write(entry, labDayId, caller);
        }
    }

    /** Whether it was about the plan, and was entered. */
    private boolean isOfPlan(Entry entry, UUID labDayId, Caller caller) {
        Object request = entry.request();
        if (request instanceof PlanRequest plan) {
            plans.save(entry.id(), labDayId, plan, 0, caller, entry.at());
        } else if (request instanceof PlanEntries.Change change) {
            plans.change(entry.id(), labDayId, change.request(), change.seen(), caller, entry.at());
        } else if (request instanceof PlannedCellRequest cell) {
            plans.note(entry.id(), cell, caller, entry.at());
        } else {
            return false;
        }
        return true;
    }

    private void write(Entry entry, UUID labDayId, Caller caller) {
        Object request = entry.request();
        if (request instanceof LabDayRequest labDay) {
            labDays.put(entry.id(), labDay, caller, entry.at());
        } else if (request instanceof TeamRequest team) {
            teams.put(entry.id(), team, caller, entry.at());
        } else if (request instanceof StationRequest station) {
            stations.put(entry.id(), station, caller, entry.at());
        } else if (request instanceof IrradianceRequest irradiance) {
            stations.putIrradiance(entry.id(), irradiance, caller, entry.at());
        } else if (request instanceof SignOffRequest signOff) {
            safety.putSignOff(entry.id(), signOff, caller, entry.at());
        } else if (request instanceof IncidentRequest incident) {
            incidents.put(entry.id(), incident, caller, entry.at());
        } else if (request instanceof CellRequest cell) {
            cells.put(entry.id(), cell, caller, entry.at());
        } else if (request instanceof ControlCellRequest control) {
            controls.choose(labDayId, control, caller, entry.at());
        } else if (request instanceof OutcomeRequest outcome) {
            cells.putOutcome(entry.id(), outcome, caller, entry.at());
        } else if (request instanceof ReadingRequest reading) {
            readings.put(entry.id(), reading, caller, entry.at());
        }
    }
}
