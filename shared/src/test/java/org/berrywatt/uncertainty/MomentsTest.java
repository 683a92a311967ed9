package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MomentsTest {

    /**
     * NIST/ITL Statistical Reference Datasets, univariate: certified mean and standard deviation. NumAcc3 is hard: a tenth
     * beside a million, itself not a double, so that about nine digits of its spread survive the input.
     */
    @ParameterizedTest
    @CsvSource({
        "PiDigits, 4.53480000000000, 2.86733906028871, 1e-14",
        "Lottery, 518.958715596330, 291.699727470969, 1e-14",
        "Lew, -177.435000000000, 277.332168044316, 1e-14",
        "Mavro, 2.00185600000000, 0.000429123454003053, 1e-12",
        "NumAcc1, 10000002, 1, 1e-15",
        "NumAcc3, 1000000.2, 0.1, 1e-9"
    })
    void reproducesCertifiedMeanAndStandardDeviation(
            String name, double mean, double standardDeviation, double relative) throws IOException {
        Moments moments = Moments.of(readings(name));
        assertThat(moments.mean()).isCloseTo(mean, within(1e-14 * Math.abs(mean)));
        assertThat(moments.standardDeviation()).isCloseTo(standardDeviation, within(relative * standardDeviation));
    }

    private static double[] readings(String name) throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/nist/univariate_" + name + ".csv")).stream()
                .filter(line -> line.matches("[-+0-9].*"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
