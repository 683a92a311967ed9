package org.berrywatt.server.findings;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellCurveAnswer;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.server.leaderboard.MeasuredDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.statistics.Resampling;
import org.springframework.stereotype.Service;

/** Build parameters against the performance of a class's cells. */
@Service
class Findings {

    /** Draws are seeded by nothing but this: the same cells always say the same. */
    static final long SEED = 1;

    private static final int REMEMBERED = 60;

    private final MeasuredDays days;

    /** What was last said of a day, since a whole class asks at once whenever a reading comes in. */
    private final Cache<Question, Said> said =
            Caffeine.newBuilder().maximumSize(REMEMBERED).build();

    private record Question(UUID labDayId, Filter filter) {}

    private record Said(StudyTable table, FindingsAnswer answer) {}

    Findings(MeasuredDays days) {
        this.days = days;
    }

    /**
     * What the cells of a day say that pass a filter.
     *
     * @throws Refusal {@code notFound}
     */
    FindingsAnswer of(UUID labDayId, Filter filter) {
        var table = new DayRows(Measure.POWER, false).table(List.of(days.of(labDayId)));
        return said.asMap()
                .compute(
                        new Question(labDayId, filter),
                        (question, last) -> last != null && last.table.equals(table)
                                ? last
                                : new Said(table, answer(table, filter)))
                .answer();
    }

    /** @throws Refusal {@code notFound} */
    List<CellCurveAnswer> curves(UUID labDayId) {
        return days.curves(labDayId);
    }

    private static FindingsAnswer answer(StudyTable table, Filter filter) {
        var looked = table.filtered(filter);
        var found = StudyFindings.of(looked.study(), Resampling.seeded(SEED));
        return new FindingsAnswers(Measure.POWER, null, table, filter, List.of()).of(looked, found);
    }
}
