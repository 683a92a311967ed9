package org.berrywatt.uncertainty;

import static org.berrywatt.uncertainty.Published.json;
import static org.berrywatt.uncertainty.Published.number;
import static org.berrywatt.uncertainty.Published.numbers;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.validation.Row;
import tools.jackson.databind.JsonNode;

/** What both evaluations of uncertainty reproduce. */
public final class UncertaintyRows {
    private static final String STRD = "NIST/ITL StRD, univariate ";

    private UncertaintyRows() {}

    public static List<Row> all() {
        return Stream.of(guide(), supplement(), univariate())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Row> guide() {
        var gauge = endGauge();
        var readings =
                RepeatedReadings.of(numbers(json("gum_type_a_temperature.json").get("data")));
        return List.of(
                Row.printed(
                        "combined uncertainty of an end gauge",
                        "JCGM 100:2008, H.1",
                        "32",
                        gauge.standardUncertainty(),
                        "nm"),
                Row.printed(
                        "uncertainty of the mean of 20 temperatures",
                        "JCGM 100:2008, 4.4.3",
                        "0.333",
                        readings.standardUncertainty(),
                        "°C"));
    }

    private static Budget endGauge() {
        JsonNode published = json("gum_h1_end_gauge.json");
        List<Input> inputs = StreamSupport.stream(published.get("inputs").spliterator(), false)
                .map(it -> Input.normal(it.get("name").asString(), number(it, "value"), "nm", number(it, "u")))
                .toList();
        return FirstOrder.evaluate(inputs, x -> x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]));
    }

    private static List<Row> supplement() {
        return List.of(
                Row.printed(
                        "half interval of four normal inputs",
                        "JCGM 101:2008, 9.2.2",
                        "3.92",
                        TenRuns.halfInterval(i -> Input.normal("x" + i, 0, "1", 1)),
                        ""),
                Row.printed(
                        "half interval of four rectangular inputs",
                        "JCGM 101:2008, 9.2.3",
                        "3.88",
                        TenRuns.halfInterval(i -> Input.rectangular("x" + i, 0, "1", Math.sqrt(3))),
                        ""),
                Row.printed(
                        "uncertainty of a weight that first order misses",
                        "JCGM 101:2008, 9.3, by quadrature (0.0754 was printed there, drawn with a standard error of"
                                + " 0.00006)",
                        "0.0755",
                        TenRuns.massUncertaintyMg(),
                        "mg"));
    }

    private static List<Row> univariate() {
        return List.of(
                digits("PiDigits", 2.86733906028871, 9),
                digits("Lottery", 291.699727470969, 9),
                digits("Lew", 277.332168044316, 9),
                digits("Mavro", 0.000429123454003053, 9),
                digits("NumAcc1", 1, 9),
                digits("NumAcc3", 0.1, 6));
    }

    private static Row digits(String name, double certified, double wanted) {
        var found = RepeatedReadings.of(data(name)).standardDeviation();
        return Row.atLeast("standard deviation", STRD + name, wanted, Row.digits(found, certified), "digits");
    }

    private static double[] data(String name) {
        var file =
                Objects.requireNonNull(UncertaintyRows.class.getResourceAsStream("/nist/univariate_" + name + ".csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> line.matches("[-+0-9].*"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
