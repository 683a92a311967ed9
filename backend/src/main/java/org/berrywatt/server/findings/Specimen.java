package org.berrywatt.server.findings;

import java.util.Locale;
import java.util.Optional;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.FindingAnswer;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.findings.Observation;
import org.berrywatt.findings.Standing;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;
import org.jspecify.annotations.Nullable;

/** A cell of the class with where it stands, looked at for one build parameter. */
record Specimen(Cell cell, TeamStanding team, CellStanding standing, Optional<RecordedLevel> level) {

    static Specimen of(Cell cell, TeamStanding team, CellStanding standing, BuildParameter parameter) {
        return new Specimen(
                cell, team, standing, cell.entry(parameter.key()).map(entry -> RecordedLevel.of(entry, parameter)));
    }

    Observation observation() {
        return new Observation(
                team.teamId().toString(),
                level.map(RecordedLevel::key).orElse(null),
                level.map(RecordedLevel::number).orElse(null),
                Standing.valueOf(standing.standing().toUpperCase(Locale.ROOT)),
                powerWm2());
    }

    /** Empty where the parameter was not recorded. */
    Optional<FindingAnswer.Dot> dot() {
        return level.map(it -> new FindingAnswer.Dot(
                cell.id(),
                cell.label(),
                team.teamId(),
                team.name(),
                team.mark(),
                it.key(),
                it.number(),
                standing.standing(),
                standing.powerDensityWm2(),
                cell.failure().map(StageOutcome::stage).orElse(null)));
    }

    private @Nullable Double powerWm2() {
        Figure power = standing.powerDensityWm2();
        return power == null ? null : power.value();
    }
}
