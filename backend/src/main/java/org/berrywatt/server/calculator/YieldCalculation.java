package org.berrywatt.server.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.YieldAnswer;
import org.berrywatt.contract.calculation.YieldAnswer.Coefficient;
import org.berrywatt.contract.calculation.YieldRequest;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.statistics.FirthLogistic;
import org.berrywatt.statistics.FisherExact;
import org.berrywatt.statistics.Proportion;
import org.jspecify.annotations.Nullable;

/** Shares of cells that worked, compared. */
final class YieldCalculation {

    private static final int MOST_ROWS = 200;
    private static final int MOST_CELLS = 100_000;
    private static final double CONFIDENCE = 0.95;
    private static final Range VALUE = Range.closed(-1e9, 1e9, "");

    private YieldCalculation() {}

    static YieldAnswer of(YieldRequest request) {
        var rows = Entries.read("rows", request.rows(), 1, MOST_ROWS, YieldCalculation::checked);
        requireOneKind(rows);
        var worked = rows.stream().mapToInt(row -> need(row.worked())).toArray();
        var made = rows.stream().mapToInt(row -> need(row.made())).toArray();
        return new YieldAnswer(
                rows.stream().map(YieldCalculation::share).toList(),
                FisherExact.of(worked, made)
                        .value()
                        .map(test -> new YieldAnswer.Exact(
                                test.p(), test.evaluation().key()))
                        .orElse(null),
                rows.get(0).value() == null ? null : logistic(rows, worked, made));
    }

    private static YieldRequest.Row checked(String path, YieldRequest.Row row) {
        var made = Given.between(path + ".made", Given.need(path + ".made", row.made()), 1, MOST_CELLS);
        Given.between(path + ".worked", Given.need(path + ".worked", row.worked()), 0, made);
        if ((row.level() == null) == (row.value() == null)) {
            throw either(path);
        }
        if (row.level() != null) {
            Named.line(path + ".level", row.level());
        }
        return new YieldRequest.Row(row.level(), VALUE.maybe(path + ".value", row.value()), made, row.worked());
    }

    private static void requireOneKind(List<YieldRequest.Row> rows) {
        for (var i = 1; i < rows.size(); i++) {
            if ((rows.get(i).value() == null) != (rows.get(0).value() == null)) {
                throw either("rows[" + i + "]");
            }
        }
    }

    private static Refusal either(String path) {
        return Refusal.of(ProblemCode.CALCULATION_EITHER).field(path + ".level").limit("level, value");
    }

    private static int need(@Nullable Integer value) {
        return Objects.requireNonNull(value);
    }

    private static YieldAnswer.Share share(YieldRequest.Row row) {
        var share = Proportion.wilson(need(row.worked()), need(row.made()), CONFIDENCE);
        return new YieldAnswer.Share(
                row.level(), row.value(), share.n(), share.successes(), share.share(), share.low(), share.high());
    }

    private static YieldAnswer.@Nullable Logistic logistic(List<YieldRequest.Row> rows, int[] worked, int[] made) {
        var x = rows.stream()
                .map(row -> new double[] {1, Objects.requireNonNull(row.value())})
                .toArray(double[][]::new);
        return FirthLogistic.fit(x, worked, made)
                .value()
                .map(YieldCalculation::logistic)
                .orElse(null);
    }

    private static YieldAnswer.Logistic logistic(FirthLogistic fit) {
        List<Coefficient> coefficients = new ArrayList<>();
        for (var column = 0; column < 2; column++) {
            coefficients.add(new Coefficient(
                    column == 0 ? "intercept" : "value",
                    fit.coefficients()[column],
                    fit.standardErrors()[column],
                    fit.low(column),
                    fit.high(column),
                    fit.p(column)));
        }
        return new YieldAnswer.Logistic(fit.penalisedLogLikelihood(), coefficients);
    }
}
