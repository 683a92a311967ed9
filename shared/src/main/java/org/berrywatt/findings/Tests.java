package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.berrywatt.statistics.BlockedTest;
import org.berrywatt.statistics.FisherExact;
import org.berrywatt.statistics.KruskalWallis;
import org.berrywatt.statistics.MannWhitney;
import org.berrywatt.statistics.OneWayAnova;
import org.berrywatt.statistics.Resampling;
import org.berrywatt.statistics.Scores;
import org.berrywatt.statistics.Spearman;
import org.berrywatt.statistics.TheilSen;

/**
 * All tests of one parameter. Each is empty when the cells cannot answer it.
 *
 * @param difference do the levels differ in performance, within blocks?
 * @param trend for numbers: does performance rise or fall, within blocks?
 * @param composite do the levels differ when a broken cell counts as the poorest, within blocks?
 * @param yield do the levels differ in how many cells come through, within blocks?
 * @param kruskalWallis do the levels differ across all cells, whoever built them?
 * @param mannWhitney the same for two levels, on logarithms, first level less second
 * @param anova the same on the logarithms themselves
 * @param spearman for numbers, across all cells
 * @param theilSen for numbers, change of the logarithm per unit
 * @param fisher yield across all cells
 */
public record Tests(
        Optional<BlockedTest> difference,
        Optional<BlockedTest> trend,
        Optional<BlockedTest> composite,
        Optional<BlockedTest> yield,
        Optional<KruskalWallis> kruskalWallis,
        Optional<MannWhitney> mannWhitney,
        Optional<OneWayAnova> anova,
        Optional<Spearman> spearman,
        Optional<TheilSen> theilSen,
        Optional<FisherExact> fisher) {

    static Tests of(Study study, Factor factor, Entries entries, Levels levels, Resampling resampling) {
        int[] cells = factor.recordedAmong(study.working());
        double[] logs = study.logsOf(cells);
        List<double[]> groups = groups(factor, cells, logs);
        double[] numbers = factor.isNumber()
                ? Arrays.stream(cells).mapToDouble(factor::numberAt).toArray()
                : new double[0];
        boolean compare = !factor.isNumber() || levels.areFew();
        return new Tests(
                compare ? difference(entries, resampling) : Optional.empty(),
                factor.isNumber() ? trend(factor, entries, resampling) : Optional.empty(),
                compare ? composite(study, factor, resampling) : Optional.empty(),
                throughput(study, factor, compare, resampling),
                compare ? KruskalWallis.of(groups).value() : Optional.empty(),
                compare && groups.size() == 2
                        ? MannWhitney.of(groups.get(0), groups.get(1)).value()
                        : Optional.empty(),
                compare ? OneWayAnova.of(groups).value() : Optional.empty(),
                factor.isNumber() ? Spearman.of(numbers, logs).value() : Optional.empty(),
                factor.isNumber() ? TheilSen.of(numbers, logs).value() : Optional.empty(),
                fisher(levels));
    }

    static Optional<BlockedTest> difference(Entries entries, Resampling resampling) {
        double[] scores = Scores.alignedRanks(entries.logs(), entries.blocks());
        return BlockedTest.ofGroups(scores, entries.levels(), entries.blocks(), resampling)
                .value();
    }

    /** Numbers enter by rank, so that one far value does not decide. */
    static Optional<BlockedTest> trend(Factor factor, Entries entries, Resampling resampling) {
        double[] scores = Scores.alignedRanks(entries.logs(), entries.blocks());
        double[] numbers = Arrays.stream(entries.levels())
                .mapToDouble(level -> factor.number(level).orElseThrow())
                .toArray();
        return BlockedTest.ofTrend(scores, Scores.ranks(numbers), entries.blocks(), resampling)
                .value();
    }

    private static Optional<BlockedTest> composite(Study study, Factor factor, Resampling resampling) {
        int[] cells = factor.recordedAmong(study.decided());
        double[] values = Arrays.stream(cells)
                .mapToDouble(cell -> study.standing(cell) == Standing.COUNTS ? study.log(cell) : -1e9)
                .toArray();
        return blocked(study, factor, cells, Scores.ranks(values), resampling);
    }

    /** Do levels differ in the share that came through; for numbers of many values: does the share rise or fall? */
    private static Optional<BlockedTest> throughput(
            Study study, Factor factor, boolean compare, Resampling resampling) {
        int[] cells = factor.recordedAmong(study.decided());
        double[] came = Arrays.stream(cells)
                .mapToDouble(cell -> study.standing(cell) == Standing.COUNTS ? 1 : 0)
                .toArray();
        return compare
                ? blocked(study, factor, cells, came, resampling)
                : rising(factor, Entries.of(study, factor, cells, came), resampling);
    }

    private static Optional<BlockedTest> rising(Factor factor, Entries entries, Resampling resampling) {
        double[] numbers = Arrays.stream(entries.levels())
                .mapToDouble(level -> factor.number(level).orElseThrow())
                .toArray();
        return BlockedTest.ofTrend(entries.logs(), Scores.ranks(numbers), entries.blocks(), resampling)
                .value();
    }

    private static Optional<BlockedTest> blocked(
            Study study, Factor factor, int[] cells, double[] scores, Resampling resampling) {
        Entries entries = Entries.of(study, factor, cells, scores);
        return BlockedTest.ofGroups(entries.logs(), entries.levels(), entries.blocks(), resampling)
                .value();
    }

    private static Optional<FisherExact> fisher(Levels levels) {
        int[] came = levels.all().stream().mapToInt(Level::counted).toArray();
        int[] decided = levels.all().stream()
                .mapToInt(level -> level.counted() + level.failed())
                .toArray();
        return FisherExact.of(came, decided).value();
    }

    private static List<double[]> groups(Factor factor, int[] cells, double[] logs) {
        Map<Integer, List<Integer>> byLevel = new TreeMap<>();
        for (int i = 0; i < cells.length; i++) {
            byLevel.computeIfAbsent(factor.code(cells[i]), level -> new ArrayList<>())
                    .add(i);
        }
        return byLevel.values().stream()
                .map(own -> own.stream().mapToDouble(i -> logs[i]).toArray())
                .toList();
    }
}
