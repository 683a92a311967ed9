package org.berrywatt.findings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a reader should know beside the sentence; the yield always comes first. */
final class Notes {

    private final Study study;
    private final Judgement judgement;
    private final Look look;
    private final Levels levels;
    private final Optional<Sentence> influence;

    Notes(Study study, Judgement judgement, Optional<Sentence> influence) {
        this.study = study;
        this.judgement = judgement;
        this.look = judgement.look();
        this.levels = look.levels();
        this.influence = influence;
    }

    List<Sentence> all() {
        Stream<Optional<Sentence>> told =
                Stream.of(failures(), survivors(), size(), chance(), joint(), turned(), influence, smallest());
        return Stream.concat(told, scope()).flatMap(Optional::stream).toList();
    }

    /** Who was compared and what was left out. */
    private Stream<Optional<Sentence>> scope() {
        boolean teamsOnly = look.compares() && look.entries().teamsOnly();
        return Stream.of(
                when(
                        teamsOnly,
                        Sentence.of("teamsOnly", Map.of("teams", look.entries().size()))),
                when(look.compares() && levels.haveOneTeamEach(), Sentence.of("oneTeamPerLevel", Map.of())),
                count("waiting", levels.waiting()),
                count("notRecorded", levels.notRecorded()));
    }

    private Optional<Sentence> failures() {
        return levels.made() == 0 ? Optional.empty() : Optional.of(YieldNote.of(levels));
    }

    private Optional<Sentence> survivors() {
        if (!look.compares() || !judgement.survivorsMislead()) {
            return Optional.empty();
        }
        Level best = levels.best().orElseThrow();
        return Optional.of(Sentence.of(
                "survivors", Map.of("bestLevel", best.key(), "failed", best.failed(), "made", best.made())));
    }

    /** How large the difference is, once there is reason to believe in one. */
    private Optional<Sentence> size() {
        if (!judgement.believed() || judgement.raisedJointly()) {
            return Optional.empty();
        }
        return look.effect()
                .map(Effect::upwards)
                .map(effect -> Sentence.of(
                        "size",
                        Map.of(
                                "ratio", twoDigits(effect.ratio()),
                                "low", twoDigits(effect.low()),
                                "high", twoDigits(effect.high()),
                                "bestLevel", effect.toLevel(),
                                "worstLevel", effect.fromLevel())));
    }

    /** How often in a thousand shufflings chance would do as much: rounded up, so that it is never 0. */
    private Optional<Sentence> chance() {
        return when(look.compares(), Sentence.of("chance", Map.of("perThousand", (int)
                Math.ceil(1000 * look.p() - 1e-9))));
    }

    private Optional<Sentence> joint() {
        if (!look.compares()) {
            return Optional.empty();
        }
        return judgement.raisedJointly()
                ? Optional.of(JointNote.of(judgement.joint().orElseThrow()))
                : when(judgement.fadesJointly(), Sentence.of("joint.fades", Map.of()));
    }

    /** Simpson's check of the best against the worst level, within every other parameter and within teams. */
    private Optional<Sentence> turned() {
        return judgement.believed() ? SimpsonCheck.of(study, look) : Optional.empty();
    }

    /** What the class could have seen, told when it saw nothing. */
    private Optional<Sentence> smallest() {
        if (judgement.strength() != Strength.CANNOT_TELL) {
            return Optional.empty();
        }
        return look.effect()
                .filter(effect -> effect.smallest() < 1000)
                .map(effect -> Sentence.of("smallest", Map.of("ratio", twoDigits(effect.smallest()))));
    }

    static double twoDigits(double ratio) {
        int digits = ratio >= 100 ? (int) Math.log10(ratio) + 1 : 2;
        return new BigDecimal(ratio).round(new MathContext(digits)).doubleValue();
    }

    private static Optional<Sentence> count(String key, int cells) {
        return when(cells > 0, Sentence.of(key, Map.of("cells", cells)));
    }

    private static Optional<Sentence> when(boolean fits, Sentence note) {
        return fits ? Optional.of(note) : Optional.empty();
    }
}
