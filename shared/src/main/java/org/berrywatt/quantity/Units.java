package org.berrywatt.quantity;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Every unit of the lab day. */
public final class Units {

    private static final Map<String, MeasuringUnit> BY_KEY =
            UnitTable.ALL.stream().collect(toUnmodifiableMap(MeasuringUnit::key, Function.identity()));

    private static final Map<String, List<MeasuringUnit>> BY_SPELLING = bySpelling();

    private Units() {}

    /** Every unit, grouped by quantity. */
    public static List<MeasuringUnit> all() {
        return UnitTable.ALL;
    }

    /** The unit of a key, or empty when there is none. */
    public static Optional<MeasuringUnit> of(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The unit that a spelling means among some quantities, or empty. Case matters only for a leading m or M. */
    static Optional<MeasuringUnit> spelt(String symbol, Collection<Quantity> among) {
        return BY_SPELLING.getOrDefault(Spelling.unit(symbol), List.of()).stream()
                .filter(unit -> among.contains(unit.quantity()))
                .findFirst();
    }

    /** The unit of quantities that are counted in one unit only, such as pH; empty where there is a choice. */
    static Optional<MeasuringUnit> onlyOne(Collection<Quantity> among) {
        List<MeasuringUnit> fitting = UnitTable.ALL.stream()
                .filter(unit -> among.contains(unit.quantity()))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    /** The symbols of some quantities, for a sentence that says what was expected. */
    static String symbols(Collection<Quantity> among) {
        return UnitTable.ALL.stream()
                .filter(unit -> among.contains(unit.quantity()))
                .map(MeasuringUnit::symbol)
                .collect(joining(", "));
    }

    private static Map<String, List<MeasuringUnit>> bySpelling() {
        Map<String, List<MeasuringUnit>> units = new HashMap<>();
        for (MeasuringUnit unit : UnitTable.ALL) {
            unit.symbols().stream()
                    .map(Spelling::unit)
                    .distinct()
                    .forEach(spelling -> units.computeIfAbsent(spelling, it -> new ArrayList<>())
                            .add(unit));
        }
        return Map.copyOf(units);
    }
}
