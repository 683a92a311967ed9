package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody knows what will be typed: either a sweep is refused with its value and limit, or all of its figures are finite. */
class JunkSweepTest {
    private static final List<Double> NASTY = List.of(
            0.0,
            -0.0,
            1.0,
            -1.0,
            Double.NaN,
            Double.POSITIVE_INFINITY,
            Double.MIN_VALUE,
            1e-300,
            1e300,
            Double.MAX_VALUE);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void refusesOrAnswersFinitely(long seed) {
        var random = new SplittableRandom(seed);
        var outcomes =
                IntStream.range(0, 20_000).mapToObj(i -> sweep(points(random))).toList();
        assertThat(outcomes).filteredOn(Optional::isPresent).hasSizeGreaterThan(100);
        outcomes.stream().flatMap(Optional::stream).forEach(JunkSweepTest::assertFinite);
    }

    private static void assertFinite(Sweep sweep) {
        var figures = sweep.figures();
        assertThat(figures.fillFactor().value()).isBetween(0.0, 1.0);
        assertThat(figures.shuntConductanceS()).isFinite().isNotNegative();
        assertThat(Stream.of(
                                figures.shortCircuitCurrentA(),
                                figures.openCircuitVoltageV(),
                                figures.maximumPowerW(),
                                figures.fillFactor(),
                                sweep.peak().voltageV(),
                                sweep.peak().currentA())
                        .map(Estimate::value))
                .allMatch(Predicate.not(value -> value.isNaN() || value.isInfinite() || value <= 0));
    }

    private static Optional<Sweep> sweep(List<SweepPoint> points) {
        try {
            return Optional.of(Sweep.of(points));
        } catch (SweepRefused refused) {
            assertThat(refused).hasMessageContaining(refused.value()).hasMessageContaining(refused.limit());
            assertThat(refused.limit()).matches("[\\[(].*, .*[\\])].*");
            return Optional.empty();
        }
    }

    private static List<SweepPoint> points(SplittableRandom random) {
        var kind = random.nextInt(4);
        return IntStream.range(0, random.nextInt(12))
                .mapToObj(i -> SweepPoint.exact(number(kind, random), number(kind, random)))
                .toList();
    }

    /** Ordinary, small whole, of any size, or nasty numbers. */
    private static double number(int kind, SplittableRandom random) {
        return switch (kind) {
            case 0 -> random.nextDouble(0, 1);
            case 1 -> random.nextInt(-1, 4);
            case 2 -> (random.nextInt(8) == 0 ? -1 : 1) * Math.pow(10, random.nextDouble(-12, 6));
            default -> NASTY.get(random.nextInt(NASTY.size()));
        };
    }
}
