package org.berrywatt.server.light;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;

/** Lamps and instruments by their key on the wire and in the database. */
final class LightKeys {

    static final List<String> LAMPS =
            Arrays.stream(Lamp.values()).map(Lamp::key).toList();
    static final List<String> INSTRUMENTS =
            Arrays.stream(Instrument.values()).map(Instrument::key).toList();

    private LightKeys() {}

    static Lamp lamp(String key) {
        return of(key, Lamp.values(), Lamp::key);
    }

    static Instrument instrument(String key) {
        return of(key, Instrument.values(), Instrument::key);
    }

    private static <E> E of(String key, E[] all, Function<E, String> keyOf) {
        return Arrays.stream(all)
                .filter(one -> keyOf.apply(one).equals(key))
                .findFirst()
                .orElseThrow();
    }
}
