package org.berrywatt.light;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.light.SpectraTest.Published;
import org.berrywatt.validation.Row;

/** What spectra and the eye's response reproduce. */
public final class LightRows {
    private LightRows() {}

    public static List<Row> all() {
        return List.of(
                Row.printed(
                        "reference sunlight, 280 to 4000 nm",
                        "ASTM G173-03",
                        "1000.37",
                        Spectra.AM15G.integral(),
                        "W/m²"),
                Row.printed("sum of V(λ), 1 nm steps", "CIE 18.2 / ISO 23539", "106.8569", sumOfEye(), ""),
                Row.atMost(
                        "luminous efficacy of every spectrum and black body, worst",
                        "tables of CIE 15, recomputed with 40 digits",
                        1e-4,
                        worstEfficacy(),
                        "relative"));
    }

    private static double sumOfEye() {
        return IntStream.rangeClosed(360, 830)
                .mapToDouble(Responses.LUMINOUS::applyAsDouble)
                .sum();
    }

    private static double worstEfficacy() {
        try (Stream<Published> published = SpectraTest.efficacies()) {
            return published.mapToDouble(LightRows::error).max().orElse(Double.NaN);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double error(Published one) {
        var found = Efficacy.lumensPerWatt(Objects.requireNonNull(SpectraTest.spectrum(one)));
        return Math.abs(found - one.lumensPerWatt()) / one.lumensPerWatt();
    }
}
