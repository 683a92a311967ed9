package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.berrywatt.plan.Statement.Weight;

/** Whether an afternoon is long enough, in sentences. */
public final class TimeStatements {

    /** Saving less than this is not worth another plate. */
    private static final int WORTH_MINUTES = 10;

    private TimeStatements() {}

    public static List<Statement> of(Timetable timetable, Workshop workshop) {
        int end = timetable.endMin();
        if (end <= workshop.minutes()) {
            return List.of(Statement.of("inTime", Weight.GOOD, Map.of("end", end, "left", workshop.minutes() - end)));
        }
        var sentences = new ArrayList<Statement>();
        sentences.add(Statement.of("tooLong", Weight.CANNOT, Map.of("end", end, "over", end - workshop.minutes())));
        saving(sentences, "oneMoreHeater", end, timetable.endWithOneMoreHeaterMin());
        saving(sentences, "oneMoreStation", end, timetable.endWithOneMoreStationMin());
        sentences.add(Statement.of("twoDays", Weight.NOTE, Map.of()));
        return sentences;
    }

    private static void saving(List<Statement> sentences, String key, int end, int endThen) {
        if (end - endThen >= WORTH_MINUTES) {
            sentences.add(Statement.of(key, Weight.NOTE, Map.of("end", endThen)));
        }
    }
}
