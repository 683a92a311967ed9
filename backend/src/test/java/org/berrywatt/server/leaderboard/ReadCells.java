package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.SideFiguresAnswer;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Texts;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;

/** A rehearsed day with a station in full sun of 1000 W/m², its reference, where cells of 15 x 15 mm are read. */
final class ReadCells {

    final Rehearsal day;
    final UUID yard;
    UUID team;
    private final ApplicationContext server;

    ReadCells(ApplicationContext server) {
        this.server = server;
        this.day = new Rehearsal(server);
        this.team = day.team("Larch");
        this.yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
    }

    /** A cell of the team, dark in the dark. */
    UUID litCell(String label, String voltage, String current) {
        UUID cell = day.cell(team, label, "15 x 15 mm");
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, voltage, current);
        return cell;
    }

    CellResultAnswer result(UUID cell) {
        return server.getBean(Leaderboards.class)
                .result(server.getBean(Cells.class).find(cell).orElseThrow());
    }

    List<String> missing(UUID cell) {
        return result(cell).missing().stream().map(Remark::key).toList();
    }

    List<TeamStanding> teams() {
        return server.getBean(Leaderboards.class).of(day.labDayId).teams();
    }

    TeamStanding teamOf(String name) {
        return teams().stream()
                .filter(standing -> standing.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    SideFiguresAnswer sideOf(String name) {
        return teamOf(name).side();
    }

    CellStanding standing(UUID cell) {
        return teams().stream()
                .flatMap(standing -> standing.cells().stream())
                .filter(standing -> standing.cellId().equals(cell))
                .findFirst()
                .orElseThrow();
    }

    /** What a cell is ranked by. */
    RankedFigure figure(UUID cell) {
        return Objects.requireNonNull(standing(cell).figure());
    }

    String sentence(@Nullable Remark remark) {
        Remark said = Objects.requireNonNull(remark);
        return server.getBean(Texts.class).say(said.key(), said.values());
    }
}
