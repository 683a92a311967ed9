package org.berrywatt.server.calculator;

import static java.util.stream.Collectors.toMap;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.berrywatt.leaderboard.Count;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.Instrument;
import org.berrywatt.server.typed.Given;
import org.berrywatt.uncertainty.Formula;
import org.berrywatt.uncertainty.Shape;
import org.jspecify.annotations.Nullable;

/** Choices of the science by their key on the wire. */
record Keys<E>(Map<String, E> byKey) {

    static final Keys<Instrument> INSTRUMENTS = of(Instrument.values(), Instrument::key);
    static final Keys<DyeFamily> DYES = of(DyeFamily.values(), DyeFamily::key);

    static final Keys<Formula> FORMULAS = of(Formula.values(), Formula::key);
    static final Keys<Shape> SHAPES = of(Shape.values(), Shape::key);
    static final Keys<Metric> METRICS = of(Metric.all().toArray(Metric[]::new), Metric::key);
    static final Keys<Count> COUNTS = of(Count.values(), Count::key);

    static <E> Keys<E> of(E[] all, Function<E, String> keyOf) {
        return new Keys<>(
                Arrays.stream(all).collect(toMap(keyOf, Function.identity(), (a, b) -> a, LinkedHashMap::new)));
    }

    /** @throws org.berrywatt.server.platform.Refusal {@code value.missing}, {@code choice.unknown} */
    E need(String field, @Nullable String key) {
        return Objects.requireNonNull(byKey.get(Given.choice(field, key, byKey.keySet())));
    }

    E or(E otherwise, String field, @Nullable String key) {
        return key == null ? otherwise : need(field, key);
    }
}
