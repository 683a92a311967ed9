package org.berrywatt.server.demo;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.contract.Typed;

/** Turns rows about the plan into the requests that pages would have sent. */
final class PlanEntries {

    private final Names names;
    private final List<Row> parts = Table.rows("plan-parts").toList();

    PlanEntries(Names names) {
        this.names = names;
    }

    /** A plan as it was asked for. */
    PlanRequest plan(Row row) {
        return new PlanRequest(
                row.count("teams"),
                row.count("cells_per_team"),
                varied(),
                parts("fixed")
                        .map(part -> new BuildValue(part.text("name"), part.text("text"), part.textOrNothing("unit")))
                        .toList(),
                List.of(),
                parts("heater")
                        .map(part -> new PlanRequest.PlanHeater(part.text("name"), part.count("text")))
                        .toList(),
                row.count("stations"),
                row.count("minutes"),
                Double.parseDouble(row.text("ratio")),
                Double.valueOf(row.text("spread")),
                false,
                false,
                row.count("waste_percent"),
                Long.valueOf(row.text("seed")));
    }

    private List<PlanRequest.PlanFactor> varied() {
        return parts("varied")
                .map(part -> part.text("name"))
                .distinct()
                .map(name -> new PlanRequest.PlanFactor(
                        name,
                        parts("varied")
                                .filter(part -> part.text("name").equals(name))
                                .map(part -> new Typed(part.text("text"), part.textOrNothing("unit")))
                                .toList()))
                .toList();
    }

    private Stream<Row> parts(String part) {
        return parts.stream().filter(row -> row.text("part").equals(part));
    }

    /** A change by hand. */
    Change change(Row row) {
        return new Change(
                new PlanChangeRequest(row.text("label"), row.text("parameter"), row.count("level")), row.count("seen"));
    }

    PlannedCellRequest cell(Row row) {
        return new PlannedCellRequest(names.of(row.id("cell_id")), row.text("label"));
    }

    /**
     * A change with what its page saw.
     *
     * @param seen version of the plan
     */
    record Change(PlanChangeRequest request, long seen) {}
}
