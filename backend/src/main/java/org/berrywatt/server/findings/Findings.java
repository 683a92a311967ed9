package org.berrywatt.server.findings;

import static java.util.stream.Collectors.toMap;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.UUID;
import java.util.function.Function;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.statistics.Resampling;
import org.springframework.stereotype.Service;

/** Build parameters against the performance of a class's cells. */
@Service
class Findings {

    /** Draws are seeded by nothing but this: the same cells always say the same. */
    private static final long SEED = 1;

    private static final int DAYS = 20;

    private final Cells cells;
    private final Leaderboards leaderboards;

    /** What was last said of a day, since a whole class asks at once whenever a reading comes in. */
    private final Cache<UUID, Said> said =
            Caffeine.newBuilder().maximumSize(DAYS).build();

    private record Said(LeaderboardState state, FindingsAnswer answer) {}

    Findings(Cells cells, Leaderboards leaderboards) {
        this.cells = cells;
        this.leaderboards = leaderboards;
    }

    /** @throws Refusal {@code notFound} */
    FindingsAnswer of(UUID labDayId) {
        LeaderboardState state = leaderboards.of(labDayId);
        DayTable table =
                DayTable.of(state, cells.ofLabDay(labDayId).stream().collect(toMap(Cell::id, Function.identity())));
        var dots = table.dots();
        return said.asMap()
                .compute(
                        labDayId,
                        (id, last) -> last != null
                                        && last.state.equals(state)
                                        && last.answer.cells().equals(dots)
                                ? last
                                : new Said(state, answer(id, table)))
                .answer();
    }

    private static FindingsAnswer answer(UUID labDayId, DayTable table) {
        StudyFindings found = StudyFindings.of(table.study(), Resampling.seeded(SEED));
        return new FindingsAnswer(labDayId, table.dots(), table.units(), StudyAnswers.of(found));
    }
}
