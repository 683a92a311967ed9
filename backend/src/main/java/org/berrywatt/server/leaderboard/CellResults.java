package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.normalise.Evaluation;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Result;
import org.berrywatt.server.worked.Worked;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** A judged cell with its worked calculation. */
final class CellResults {

    private CellResults() {}

    /**
     * As it travels.
     *
     * @param course what later readings tell of a settled cell
     * @param numbers what a result rests on
     */
    static CellResultAnswer of(
            Rated rated, Rule rule, Optional<Remark> course, @Nullable NormalisationRequest numbers) {
        Judged judged = rated.judged();
        CellStanding standing = rated.standing(rule.metric());
        if (judged instanceof Judged.Counts counts) {
            return withResult(standing, rule, rated, counts, notes(counts, course), numbers);
        }
        return judged instanceof Judged.Waiting waiting
                ? withoutResult(standing, rule, waiting.missing())
                : withoutResult(standing, rule, List.of());
    }

    private static List<Remark> notes(Judged.Counts counts, Optional<Remark> course) {
        return Stream.concat(course.stream(), counts.notes().stream()).toList();
    }

    private static CellResultAnswer withResult(
            CellStanding standing,
            Rule rule,
            Rated rated,
            Judged.Counts counts,
            List<Remark> notes,
            @Nullable NormalisationRequest numbers) {
        Result result = counts.result();
        return new CellResultAnswer(
                standing.cellId(),
                standing.label(),
                standing.standing(),
                standing.remark(),
                rule.metric().key(),
                standing.figure(),
                Worked.figure(result.irradiance().effectiveWm2()),
                figure(counts, Measurand.CURRENT_DENSITY),
                figure(counts, Measurand.VOLTAGE),
                figure(counts, Measurand.FILL_FACTOR),
                standing.powerDensityWm2(),
                atReferenceArea(counts),
                Worked.steps(result.steps()),
                Worked.budget(result.powerDensityWm2()),
                Optional.ofNullable(rated.obstacle()).stream().toList(),
                notes,
                numbers);
    }

    private static Figure figure(Judged.Counts counts, Measurand measurand) {
        Evaluation evaluation = counts.result().evaluation();
        return Worked.figure(
                evaluation.budget(measurand).estimate(),
                evaluation.interval(
                        measurand,
                        Draws.of(counts.cell().labDayId()),
                        counts.cell().id().toString()));
    }

    private static Figure atReferenceArea(Judged.Counts counts) {
        Estimate power = counts.result().powerAtReferenceAreaW();
        double areaM2 = power.value() / counts.result().powerDensityWm2().value();
        return Worked.figure(power, counts.reading().powerDensity().interval().times(areaM2));
    }

    private static CellResultAnswer withoutResult(CellStanding standing, Rule rule, List<Remark> missing) {
        return new CellResultAnswer(
                standing.cellId(),
                standing.label(),
                standing.standing(),
                standing.remark(),
                rule.metric().key(),
                standing.figure(),
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                List.of(),
                missing,
                List.of(),
                null);
    }
}
