package org.berrywatt.server.paper;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.berrywatt.server.paper.Entries.Spot;

/** From the field of a request that is refused to the place in the file from which it came. */
final class Spots {

    private static final Map<String, String> COLUMNS =
            Map.of("teamId", "team", "cellId", "cell", "stationId", "station", "label", "cell");

    private Spots() {}

    /** @param thing column of the name of what the row brings, or is about */
    static Function<String, Spot> of(PaperRow row, String thing) {
        return field -> {
            var column = field.equals("name") ? thing : COLUMNS.getOrDefault(field, PaperColumn.snake(field));
            return new Spot(row, column);
        };
    }

    /** The rows of a sweep; what is wrong with all of them stands at the first. */
    static Function<String, Spot> of(List<PaperRow> rows) {
        return field -> {
            if (!field.startsWith("points[")) {
                return field.equals("points")
                        ? new Spot(rows.get(0), null)
                        : of(rows.get(0), "cell").apply(field);
            }
            var row = rows.get(index(field));
            var dot = field.indexOf('.');
            return new Spot(row, dot < 0 ? null : field.substring(dot + 1));
        };
    }

    /** The number in {@code points[3].load}. */
    static int index(String field) {
        return Integer.parseInt(field.substring(field.indexOf('[') + 1, field.indexOf(']')));
    }
}
