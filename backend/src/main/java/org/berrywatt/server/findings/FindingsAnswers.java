package org.berrywatt.server.findings;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.Remark;
import org.berrywatt.findings.StudyFindings;
import org.jspecify.annotations.Nullable;

/**
 * Findings of the cells of a table that pass a filter, as they travel.
 *
 * @param outcome what the compared column is called, where it is one of a file
 */
record FindingsAnswers(Measure measure, @Nullable String outcome, StudyTable all, Filter filter, List<Remark> notes) {

    /** More dots are no picture, and more labels nobody reads. */
    private static final int MOST_DOTS = 2_000;

    private static final int MOST_LEFT_OUT = 300;

    FindingsAnswer of(StudyTable looked, StudyFindings found) {
        return new FindingsAnswer(
                measure.key(),
                outcome,
                all.rows().size(),
                leftOut(looked),
                Choices.of(all),
                looked.rows().size(),
                looked.dots(MOST_DOTS),
                looked.units(),
                StudyAnswers.of(found),
                notes);
    }

    private List<String> leftOut(StudyTable looked) {
        if (looked.rows().size() == all.rows().size()) {
            return List.of();
        }
        Set<StudyRow> kept = new HashSet<>(looked.rows());
        return all.rows().stream()
                .filter(row -> !kept.contains(row))
                .limit(MOST_LEFT_OUT)
                .map(StudyRow::label)
                .toList();
    }
}
