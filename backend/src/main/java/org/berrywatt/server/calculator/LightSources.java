package org.berrywatt.server.calculator;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.light.BlackBody;
import org.berrywatt.light.Illuminant;
import org.berrywatt.light.Lamp;
import org.berrywatt.light.LightSource;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.light.SpectrumRefused;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;

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
        return OWN.equals(source) ? own(Given.need("spectrum", request.spectrum())) : KEYS.need("source", source);
    }

    private static LightSource own(String csv) {
        try {
            return OwnSpectrum.read(OWN, csv);
        } catch (SpectrumRefused fault) {
            throw Refusal.of(ProblemCode.CALCULATION_SPECTRUM)
                    .field("spectrum")
                    .with("row", fault.row())
                    .value(fault.value())
                    .limit(fault.limit());
        }
    }

    private static Map<String, LightSource> byKey() {
        var sources = new LinkedHashMap<String, LightSource>();
        Arrays.stream(Lamp.values()).forEach(lamp -> sources.put(lamp.key(), lamp));
        Arrays.stream(Illuminant.values()).forEach(table -> sources.put(table.key(), table));
        return sources;
    }
}
