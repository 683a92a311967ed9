package org.berrywatt.server.calculator;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.light.BlackBody;
import org.berrywatt.light.Illuminant;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.LightSource;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.SpectrumTable;

/** What shines: a lamp or a standard's spectrum by its key, a black body by its temperature, a spectrum of one's own. */
final class LightSources {

    private static final String BLACK_BODY = "blackBody";
    private static final String OWN = "ownSpectrum";
    private static final Keys<LightSource> KEYS = new Keys<>(byKey());

    private LightSources() {}

    static LightSource of(LightRequest request) {
        var source = request.source();
        if (BLACK_BODY.equals(source)) {
            return BlackBody.behindGlass(Ranges.BLACK_BODY_K.need("blackBodyK", request.blackBodyK()));
        }
        return OWN.equals(source)
                ? SpectrumTable.read("spectrum", OWN, Given.need("spectrum", request.spectrum()))
                : KEYS.need("source", source);
    }

    private static Map<String, LightSource> byKey() {
        var sources = new LinkedHashMap<String, LightSource>();
        Arrays.stream(Lamp.values()).forEach(lamp -> sources.put(lamp.key(), lamp));
        Arrays.stream(Illuminant.values()).forEach(table -> sources.put(table.key(), table));
        return sources;
    }
}
