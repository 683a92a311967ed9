package org.berrywatt.server.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.FindingAnswer;
import org.berrywatt.contract.Remark;
import org.berrywatt.findings.Level;
import org.berrywatt.findings.ParameterFinding;
import org.berrywatt.findings.Sentence;
import org.berrywatt.statistics.KruskalWallis;
import org.berrywatt.statistics.Spearman;
import org.jspecify.annotations.Nullable;

/** A finding as it travels. */
final class FindingAnswers {

    private FindingAnswers() {}

    static FindingAnswer of(UUID labDayId, BuildParameter parameter, List<Specimen> cells, ParameterFinding finding) {
        return new FindingAnswer(
                labDayId,
                parameter.key(),
                parameter.kind().key(),
                parameter.kind() == BuildParameter.Kind.NUMBER
                        ? RecordedLevel.unit(parameter).key()
                        : null,
                cells.stream().map(Specimen::dot).flatMap(Optional::stream).toList(),
                finding.levels().stream().map(FindingAnswers::level).toList(),
                finding.spearman().map(FindingAnswers::correlation).orElse(null),
                finding.kruskalWallis().map(FindingAnswers::test).orElse(null),
                finding.strength().key(),
                remark(finding.sentence()),
                finding.notes().stream().map(FindingAnswers::remark).toList());
    }

    private static FindingAnswer.Level level(Level level) {
        return new FindingAnswer.Level(
                level.key(), level.made(), level.counted(), level.failed(), orNull(level.medianWm2()));
    }

    private static FindingAnswer.RankCorrelation correlation(Spearman it) {
        return new FindingAnswer.RankCorrelation(
                it.rho(), it.p(), it.n(), it.evaluation().key());
    }

    private static FindingAnswer.RankTest test(KruskalWallis it) {
        return new FindingAnswer.RankTest(
                it.h(), it.degreesOfFreedom(), it.p(), it.n(), it.evaluation().key());
    }

    private static Remark remark(Sentence sentence) {
        return new Remark(sentence.key(), sentence.values());
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
