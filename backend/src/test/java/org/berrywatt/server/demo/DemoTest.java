package org.berrywatt.server.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.plan.Plans;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;

@SpringBootTest(properties = "berrywatt.demo=live", webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class DemoTest {

    @Autowired
    private Leaderboards leaderboards;

    @Autowired
    private LabDays labDays;

    @Autowired
    private Plans plans;

    @Autowired
    private DemoDay demoDay;

    @Autowired
    private DemoTeacher teacher;

    @Autowired
    private DemoNote note;

    @Autowired
    private Replay replay;

    @Autowired
    private JdbcClient database;

    @Test
    void ranksTheEightTeamsOfTheDemoDay() {
        LeaderboardState state = leaderboards.of(DemoDay.id());

        assertThat(state.teams())
                .hasSize(8)
                .allSatisfy(team -> assertThat(team.cells()).hasSize(3));
        assertThat(state.teams()).extracting(TeamStanding::place).first().isEqualTo(1);
        assertThat(standings(state)).contains("counts", "failed");
    }

    @Test
    void hasAPlanFromWhichThreeCellsDeviate() {
        var planned = plans.cells(DemoDay.id(), teacher.caller());

        assertThat(planned)
                .hasSize(24)
                .allSatisfy(cell -> assertThat(cell.cellId()).isNotNull());
        assertThat(planned)
                .filteredOn(cell -> !cell.deviations().isEmpty())
                .hasSize(3)
                .allSatisfy(cell -> assertThat(cell.deviations())
                        .extracting(deviation -> deviation.planned().parameter())
                        .containsExactly("bakeTemperature"));
    }

    @Test
    void loadsTheDayOnceHoweverOftenTheServerStarts() {
        long before = rows();

        demoDay.load();

        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void replaysTheDayBesideTheWholeOne() {
        Optional<String> title = replay.labDayId().flatMap(labDays::find).map(LabDay::title);

        assertThat(replay.labDayId()).isPresent().get().isNotEqualTo(DemoDay.id());
        assertThat(title).get().asString().contains("replayed");
    }

    @Test
    void spreadsTheReplayOverThreeMinutes() {
        List<Entry> afternoon = Afternoon.under(Names.asWritten());

        assertThat(Replay.delay(afternoon.get(0), afternoon)).isZero();
        assertThat(Replay.delay(afternoon.get(afternoon.size() - 1), afternoon)).hasMinutes(3);
    }

    @Test
    void tellsHowToGetIn() {
        assertThat(note.lines())
                .anySatisfy(line -> assertThat(line).contains(DemoTeacher.NAME, DemoTeacher.PASSWORD))
                .anySatisfy(line -> assertThat(line).contains("/wall.html#" + DemoDay.id()))
                .anySatisfy(line -> assertThat(line).contains("filling"));
    }

    private static List<String> standings(LeaderboardState state) {
        return state.teams().stream()
                .flatMap(team -> team.cells().stream())
                .map(CellStanding::standing)
                .toList();
    }

    private long rows() {
        return database.sql("select count(*) from reading where lab_day_id = ?")
                .param(DemoDay.id())
                .query(Long.class)
                .single();
    }
}
