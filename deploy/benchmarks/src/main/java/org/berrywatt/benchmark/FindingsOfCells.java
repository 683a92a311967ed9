package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MILLISECONDS;

import org.berrywatt.findings.Study;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.statistics.Resampling;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Everything that is said about cells and their eight parameters: a class day with all draws, many days without any. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MILLISECONDS)
public class FindingsOfCells {

    private final Study classDay = InventedCells.study(24);
    private final Study thousands = InventedCells.study(10_000);
    private final Study hundredThousand = InventedCells.study(100_000);

    /** 24 cells, chance counted or drawn. */
    @Benchmark
    public StudyFindings classDayWithDraws() {
        return StudyFindings.of(classDay, Resampling.seeded(1));
    }

    @Benchmark
    public StudyFindings tenThousand() {
        return StudyFindings.of(thousands, Resampling.none());
    }

    @Benchmark
    public StudyFindings hundredThousand() {
        return StudyFindings.of(hundredThousand, Resampling.none());
    }
}
