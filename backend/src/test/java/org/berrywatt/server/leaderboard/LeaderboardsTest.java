package org.berrywatt.server.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Which team has which place. */
@ServerTest
class LeaderboardsTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Leaderboards leaderboards;

    private ReadCells board;

    @BeforeEach
    void readTheSun() {
        board = new ReadCells(server);
    }

    @Test
    void sharesAPlaceWhereCellsCannotBeToldApartAndPutsTeamsWithoutResultLast() {
        board.litCell("L1", "400 mV", "0.900 mA");
        board.team = board.day.team("Spruce");
        board.litCell("S1", "400 mV", "0.905 mA");
        board.day.team("Yew");

        List<TeamStanding> teams = board.teams();

        assertThat(teams).extracting(TeamStanding::name).containsExactly("Spruce", "Larch", "Yew");
        assertThat(teams).extracting(TeamStanding::place).containsExactly(1, 1, null);
    }

    @Test
    void tellsHowSureAPlaceIs() {
        board.litCell("L1", "400 mV", "0.900 mA");
        board.team = board.day.team("Spruce");
        board.litCell("S1", "400 mV", "0.905 mA");

        List<TeamStanding> teams = board.teams();

        assertThat(teams).extracting(TeamStanding::placeLow).containsExactly(1, 1);
        assertThat(teams).extracting(TeamStanding::placeHigh).containsExactly(2, 2);
        // 0.6 % apart and known to a tenth at best: little better than a coin
        assertThat(Objects.requireNonNull(teams.get(0).chanceAboveNext())).isBetween(0.45, 0.65);
        assertThat(teams.get(1).chanceAboveNext()).isNull();
    }

    @Test
    void verifiesACellThatSomebodyElseReadAlike() {
        board.day.readBy(new Caller.TeamMember(board.team, board.day.labDayId));
        var alike = board.litCell("L1", "400 mV", "0.900 mA");
        var different = board.litCell("L2", "400 mV", "1.200 mA");
        assertThat(board.sideOf("Larch").bestVerifiedCell()).isNull();

        board.day.minute(5).readBy(Rehearsal.TEACHER);
        board.day.lit(alike, board.yard, "402 mV", "0.890 mA");
        board.day.lit(different, board.yard, "400 mV", "0.600 mA");

        assertThat(board.sideOf("Larch").bestVerifiedCell()).isEqualTo(alike);
        assertThat(board.sideOf("Larch").working()).isEqualTo(2);
    }

    @Test
    void givesTheSameLeaderboardForTheSameRecords() {
        board.litCell("L1", "400 mV", "0.900 mA");

        assertThat(leaderboards.of(board.day.labDayId)).isEqualTo(leaderboards.of(board.day.labDayId));
    }
}
