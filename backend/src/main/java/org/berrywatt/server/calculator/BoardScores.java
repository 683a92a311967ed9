package org.berrywatt.server.calculator;

import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.LeaderboardRequest.CellName;
import org.berrywatt.leaderboard.BusiestStation;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.EfficiencyAsMeasured;
import org.berrywatt.leaderboard.Obstacle;
import org.berrywatt.leaderboard.RatioToControl;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Score;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.uncertainty.Deviates;
import org.jspecify.annotations.Nullable;

/** What a rule makes of the values of calculated cells. */
final class BoardScores {

    private final Rule rule;
    private final String mainStation;
    private final Deviates deviates;
    private final boolean divides;
    private final Score.@Nullable Found control;

    /**
     * For cells whose values are read.
     *
     * @param control the cell that values are divided by under the ratio to it; null when they stand for themselves
     * @throws Refusal {@code value.missing} or {@code choice.unknown} when the control cell is none of the cells
     */
    BoardScores(Rule rule, @Nullable CellName control, List<BoardCell> cells, Deviates deviates) {
        this.rule = rule;
        this.deviates = deviates;
        this.mainStation = BusiestStation.of(
                cells.stream().filter(BoardCell::counts).map(BoardCell::station).toList());
        this.divides = control != null && rule.metric() instanceof RatioToControl;
        this.control = control == null ? null : found(named(control, cells));
    }

    CellEntry entry(BoardCell cell) {
        return cell.counts() ? cell.entry(rule, score(cell)) : cell.withoutValue();
    }

    private Score score(BoardCell cell) {
        if (rule.metric() instanceof EfficiencyAsMeasured
                && !EfficiencyAsMeasured.isComparable(cell.station(), mainStation)) {
            return new Score.Missing(Obstacle.OTHER_STATION);
        }
        var value = cell.found(deviates);
        return divides ? RatioToControl.of(value, control) : value;
    }

    private Score.@Nullable Found found(BoardCell cell) {
        return cell.counts() ? cell.found(deviates) : null;
    }

    private static BoardCell named(CellName control, List<BoardCell> cells) {
        var team = Given.need("rule.control.team", control.team());
        var name = Given.need("rule.control.cell", control.cell());
        return cells.stream()
                .filter(cell -> cell.team().equals(team) && cell.cell().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                        .field("rule.control.cell")
                        .value(name)
                        .limit(String.join(
                                ", ",
                                cells.stream().map(BoardCell::cell).distinct().toList())));
    }
}
