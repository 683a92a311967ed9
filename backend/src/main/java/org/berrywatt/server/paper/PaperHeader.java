package org.berrywatt.server.paper;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.paper.PaperLines.Line;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * The line of names, understood. How a name is spelt does not matter: {@code voltage_mv}, {@code Voltage (mV)}.
 *
 * @param table the one that knows most of the names
 * @param places where each column stands, by its key
 */
record PaperHeader(PaperTable table, Map<String, Place> places, int width) {

    /**
     * @param unit key of the unit that the name ends with
     * @param header as the file names it
     */
    record Place(int at, @Nullable String unit, String header) {}

    private record Meaning(PaperColumn column, @Nullable String unit) {}

    /** Empty when no table has such columns; every other fault is told, too, and the rest is taken. */
    static Optional<PaperHeader> of(String file, Line names, Faults faults) {
        var table = Arrays.stream(PaperTable.values())
                .max(Comparator.<PaperTable>comparingLong(it -> known(it, names))
                        .thenComparing(it -> -it.columns().size()))
                .orElseThrow();
        if (known(table, names) == 0) {
            var tables = Arrays.stream(PaperTable.values()).map(PaperTable::key).collect(joining(", "));
            faults.tell(
                    file,
                    names.number(),
                    null,
                    String.join(", ", names.values()),
                    Refusal.of(ProblemCode.PAPER_NO_TABLE).limit(tables));
            return Optional.empty();
        }
        var header = new PaperHeader(table, new HashMap<>(), names.values().size());
        for (int at = 0; at < names.values().size(); at++) {
            header.place(file, names, at, faults);
        }
        header.checkNeeded(file, names, faults);
        return Optional.of(header);
    }

    /** Whether every column is here that no row can do without. */
    boolean isComplete() {
        return table.columns().stream()
                .filter(PaperColumn::needed)
                .allMatch(column -> places.containsKey(column.key()));
    }

    private static long known(PaperTable table, Line names) {
        return names.values().stream()
                .filter(name -> meaning(table, name).isPresent())
                .count();
    }

    private void place(String file, Line names, int at, Faults faults) {
        var name = names.values().get(at);
        if (name.isEmpty()) {
            return;
        }
        var meaning = meaning(table, name);
        if (meaning.isEmpty()) {
            faults.tell(file, names.number(), name, name, unknown(name));
            return;
        }
        var column = meaning.get().column();
        if (places.putIfAbsent(column.key(), new Place(at, meaning.get().unit(), name)) != null) {
            faults.tell(
                    file,
                    names.number(),
                    name,
                    name,
                    Refusal.of(ProblemCode.PAPER_COLUMN_TWICE).value(name));
        }
    }

    private void checkNeeded(String file, Line names, Faults faults) {
        table.columns().stream()
                .filter(column -> column.needed() && !places.containsKey(column.key()))
                .filter(column -> names.values().stream().noneMatch(name -> isWithoutUnit(column, name)))
                .forEach(column -> faults.tell(
                        file,
                        names.number(),
                        column.header(),
                        "",
                        Refusal.of(ProblemCode.PAPER_COLUMN_MISSING)
                                .value(column.header())
                                .limit(headers(table))));
    }

    private Refusal unknown(String name) {
        return table.columns().stream()
                .filter(column -> isWithoutUnit(column, name))
                .findFirst()
                .map(column -> Refusal.of(ProblemCode.PAPER_UNIT).limit(String.join(", ", column.headers())))
                .orElseGet(() -> Refusal.of(ProblemCode.PAPER_COLUMN_UNKNOWN).limit(headers(table)))
                .value(name);
    }

    private static String headers(PaperTable table) {
        return table.columns().stream().map(PaperColumn::header).collect(joining(", "));
    }

    private static boolean isWithoutUnit(PaperColumn column, String name) {
        return column.field() != null && squeezed(name).startsWith(squeezed(column.key()));
    }

    private static Optional<Meaning> meaning(PaperTable table, String name) {
        var plain = squeezed(name);
        return table.columns().stream()
                .map(column -> meaning(column, plain))
                .filter(Objects::nonNull)
                .findFirst();
    }

    private static @Nullable Meaning meaning(PaperColumn column, String plain) {
        var field = column.field();
        List<String> headers = column.headers();
        for (int i = 0; i < headers.size(); i++) {
            if (squeezed(headers.get(i)).equals(plain)) {
                return new Meaning(
                        column, field == null ? null : field.unitKeys().get(i));
            }
        }
        return null;
    }

    /** Small letters and digits alone, units spelt without signs of their own. */
    private static String squeezed(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("[µμ]", "u")
                .replaceAll("[ωΩ]", "ohm")
                .replace("°", "deg")
                .replace("²", "2")
                .replaceAll("[^a-z0-9]", "");
    }
}
