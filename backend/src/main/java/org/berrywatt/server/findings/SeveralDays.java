package org.berrywatt.server.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.berrywatt.contract.FindingsDaysRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.MeasuredDay;
import org.berrywatt.server.leaderboard.MeasuredDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.springframework.stereotype.Component;

/** Cells of several lab days together: teams of two days are never one team, and days are never one day. */
@Component
class SeveralDays {

    private static final int MOST = 60;

    private final LabDays labDays;
    private final MeasuredDays days;

    SeveralDays(LabDays labDays, MeasuredDays days) {
        this.labDays = labDays;
        this.days = days;
    }

    /** @throws Refusal {@code calculation.listLength} for none or too many, {@code notFound} for one that is not there */
    List<UUID> known(FindingsDaysRequest request) {
        var wanted = Given.need("days", request.days()).stream().distinct().toList();
        if (wanted.isEmpty() || wanted.size() > MOST) {
            throw Refusal.of(ProblemCode.CALCULATION_LIST_LENGTH)
                    .field("days")
                    .value(wanted.size())
                    .limit("[1, " + MOST + "]");
        }
        if (!wanted.stream().allMatch(day -> labDays.find(day).isPresent())) {
            throw Refusal.of(ProblemCode.NOT_FOUND).field("days");
        }
        return wanted;
    }

    FindingsAnswers question(List<UUID> wanted, Measure measure, Filter filter) {
        var measured = wanted.stream()
                .map(day -> measure == Measure.POWER ? days.of(day) : days.withRatios(day))
                .toList();
        return new FindingsAnswers(
                measure, null, new DayRows(measure, true).table(measured), filter, notes(measured, measure));
    }

    private static List<Remark> notes(List<MeasuredDay> days, Measure measure) {
        List<Remark> notes = new ArrayList<>();
        var light = days.stream()
                .mapToDouble(day -> day.day().referenceIrradianceWm2())
                .summaryStatistics();
        if (measure == Measure.POWER && light.getMin() < light.getMax()) {
            notes.add(new Remark("finding.days.lightsDiffer", Map.of("low", light.getMin(), "high", light.getMax())));
        }
        long without = days.stream()
                .flatMap(day -> day.board().teams().stream()
                        .flatMap(team -> team.cells().stream())
                        .filter(cell -> cell.standing().equals("counts")
                                && !day.ratiosToControl().containsKey(cell.cellId())))
                .count();
        if (measure == Measure.RATIO_TO_CONTROL && without > 0) {
            notes.add(new Remark("finding.days.noControl", Map.of("cells", without)));
        }
        return notes;
    }
}
