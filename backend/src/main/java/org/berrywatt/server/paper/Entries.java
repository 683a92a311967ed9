package org.berrywatt.server.paper;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Makes an entry of the rows that are one, unless it came before. What an entry is called follows from the day, the table and
 * what stands in the rows, so that a file that comes twice adds nothing twice.
 */
final class Entries {

    /** Writes the entry. */
    interface Write {
        void as(UUID id, Instant noticed, Instant at);
    }

    private static final int MICROSECOND = 1_000;

    private final UUID labDayId;
    private final PaperTime times;
    private final RowCheck check;
    private final Set<UUID> before;
    private final Faults faults;
    private final Map<UUID, Made> made = new HashMap<>();

    record Made(PaperTable table, PaperRow row) {}

    Entries(UUID labDayId, RowCheck check, Set<UUID> before, Faults faults) {
        this.labDayId = labDayId;
        this.times = check.times();
        this.check = check;
        this.before = before;
        this.faults = faults;
    }

    /**
     * Writes an entry, or tells why not.
     *
     * @param column finds the column of a request's field that is refused
     * @return its id, or empty when it is not there
     */
    Optional<UUID> add(PaperTable table, List<PaperRow> rows, Function<String, Spot> column, Write write) {
        var first = rows.get(0);
        var id = id(table, rows);
        var twin = made.get(id);
        if (twin != null) {
            var where = twin.row().file() + ", " + twin.row().number();
            faults.tell(first, null, Refusal.of(ProblemCode.PAPER_REPEATED).value(where));
            return Optional.empty();
        }
        made.put(id, new Made(table, first));
        if (before.contains(id)) {
            return Optional.of(id);
        }
        var faulty = rows.stream().filter(row -> !check.passes(table, row)).toList();
        if (!faulty.isEmpty()) {
            return Optional.empty();
        }
        try {
            var written = times.of(first);
            var counts = (written == null ? times.now() : written).plusNanos((long) made.size() * MICROSECOND);
            write.as(id, written == null ? times.now() : written, counts);
            return Optional.of(id);
        } catch (Refusal refusal) {
            var field = refusal.code() == ProblemCode.CELLS_FULL
                    ? "teamId"
                    : refusal.values().get("field");
            var spot = field == null ? new Spot(first, null) : column.apply(String.valueOf(field));
            faults.tell(spot.row(), spot.column(), refusal);
            return Optional.empty();
        }
    }

    /** Where a refused field stands. */
    record Spot(PaperRow row, @Nullable String column) {}

    /** The entries that are new, by their ids. */
    Map<UUID, Made> fresh() {
        var fresh = new HashMap<>(made);
        fresh.keySet().removeAll(before);
        return fresh;
    }

    int count(String file, boolean fresh) {
        return (int) made.entrySet().stream()
                .filter(entry -> entry.getValue().row().file().equals(file))
                .filter(entry -> before.contains(entry.getKey()) != fresh)
                .count();
    }

    private UUID id(PaperTable table, List<PaperRow> rows) {
        var text = new StringBuilder(labDayId + "\u001D" + table.key());
        rows.forEach(row -> text.append('\u001D').append(row.content(table.columns())));
        return UUID.nameUUIDFromBytes(text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
