package org.berrywatt.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a reader should know beside the sentence; the yield always comes first. */
record Notes(Levels levels, Entries entries, Verdict verdict, long notRecorded) {

    List<Sentence> all() {
        return Stream.of(
                        failures(),
                        size(),
                        chance(),
                        when(
                                compared() && entries.teamsOnly(),
                                Sentence.of("teamsOnly", Map.of("teams", entries.size()))),
                        when(compared() && levels.haveOneTeamEach(), Sentence.of("oneTeamPerLevel", Map.of())),
                        count("waiting", levels.waiting()),
                        count("notRecorded", notRecorded))
                .flatMap(Optional::stream)
                .toList();
    }

    private boolean compared() {
        return verdict.strength() != Strength.NOTHING_TO_COMPARE;
    }

    private boolean believed() {
        return verdict.strength() == Strength.CLEAR || verdict.strength() == Strength.SUGGESTIVE;
    }

    private Optional<Sentence> failures() {
        return levels.made() == 0 ? Optional.empty() : Optional.of(YieldNote.of(levels));
    }

    /** How large the difference is, once there is reason to believe in one. */
    private Optional<Sentence> size() {
        return believed() && levels.areFew() ? SizeNote.of(levels) : Optional.empty();
    }

    /** How often in a thousand shufflings chance would do as much: rounded up, so that it is never 0. */
    private Optional<Sentence> chance() {
        return when(compared(), Sentence.of("chance", Map.of("perThousand", (int) Math.ceil(1000 * verdict.p()))));
    }

    private static Optional<Sentence> count(String key, long cells) {
        return when(cells > 0, Sentence.of(key, Map.of("cells", cells)));
    }

    private static Optional<Sentence> when(boolean fits, Sentence note) {
        return fits ? Optional.of(note) : Optional.empty();
    }
}
