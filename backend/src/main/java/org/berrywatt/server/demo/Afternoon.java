package org.berrywatt.server.demo;

import static java.util.stream.Collectors.toMap;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Everything that was entered on the demo day. */
final class Afternoon {

    private final Names names;
    private final Requests requests;
    private final PlanEntries plan;
    private final Map<UUID, UUID> teamOfCell;

    private Afternoon(Names names) {
        this.names = names;
        this.requests = new Requests(names);
        this.plan = new PlanEntries(names);
        this.teamOfCell = Table.rows("cells").collect(toMap(row -> row.id("id"), row -> row.id("team_id")));
    }

    /** All entries in order of time; the first one is the lab day itself. */
    static List<Entry> under(Names names) {
        return new Afternoon(names).inOrder();
    }

    /** Merges the tables by time; at equal times what others build on comes first. */
    private List<Entry> inOrder() {
        return Stream.of(
                        teachers("labday", requests::labDay),
                        teachers("plan", plan::plan),
                        teachers("plan-changes", plan::change),
                        teachers("teams", requests::team),
                        teachers("stations", requests::station),
                        teachers("irradiances", requests::irradiance),
                        teachers("sign-offs", requests::signOff),
                        teachers("incidents", requests::incident),
                        teams("cells", "id", requests::cell),
                        teachers("control-cell", requests::controlCell),
                        teams("planned-cells", "cell_id", plan::cell),
                        teams("outcomes", "cell_id", requests::outcome),
                        teams("readings", "cell_id", requests::reading))
                .flatMap(Function.identity())
                .sorted(Comparator.comparing(Entry::at))
                .toList();
    }

    private Stream<Entry> teachers(String table, Function<Row, Object> request) {
        return Table.rows(table).map(row -> entry(row, null, request));
    }

    private Stream<Entry> teams(String table, String cellColumn, Function<Row, Object> request) {
        return Table.rows(table).map(row -> entry(row, teamOfCell.get(row.id(cellColumn)), request));
    }

    private Entry entry(Row row, @Nullable UUID team, Function<Row, Object> request) {
        return new Entry(names.of(row.id("id")), row.at(), names.ofNullable(team), request.apply(row));
    }
}
