package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MILLISECONDS;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.berrywatt.curve.DiodeFit;
import org.berrywatt.curve.SweepPoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The fit of the 26 measured points of the RTC France cell, covariance included; the file names its source. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MILLISECONDS)
public class CurveFit {
    private static final double TEMPERATURE_C = 33;

    private final List<SweepPoint> points = measured();

    @Benchmark
    public double fit() {
        return DiodeFit.of(points, TEMPERATURE_C).rmseA();
    }

    static List<SweepPoint> measured() {
        var file = Objects.requireNonNull(CurveFit.class.getResourceAsStream("/curve/rtc_france_57mm.csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> line.matches("[-0-9].*"))
                    .map(line -> line.split(",", -1))
                    .map(row -> SweepPoint.exact(Double.parseDouble(row[0]), Double.parseDouble(row[1])))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("the measured curve cannot be read", e);
        }
    }
}
