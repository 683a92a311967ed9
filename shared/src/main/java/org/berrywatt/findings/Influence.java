package org.berrywatt.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.berrywatt.statistics.Resampling;

/** Does one cell make the finding? Every cell is left out in turn and the look taken again. */
final class Influence {

    private static final int MOST_CELLS = 100;
    private static final int MOST_NAMED = 3;
    private static final int DRAWS = 999;

    private Influence() {}

    static Optional<Sentence> of(Study study, Look look, Resampling resampling) {
        int[] cells = look.factor().recordedAmong(study.working());
        if (cells.length > MOST_CELLS || Strength.of(look.p()) == Strength.CANNOT_TELL) {
            return Optional.empty();
        }
        Resampling draws = new Resampling(Math.min(DRAWS, resampling.draws()), resampling.seed(), resampling.watch());
        List<String> labels = Arrays.stream(cells)
                .filter(cell -> Look.pOf(study.without(cell), look.factor(), draws) > 0.05)
                .mapToObj(cell -> study.subjects().get(cell).label())
                .toList();
        if (labels.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                labels.size() <= MOST_NAMED
                        ? Sentence.of("hangsOn", Map.of("labels", String.join(", ", labels)))
                        : Sentence.of("hangsOnMany", Map.of("cells", labels.size())));
    }
}
