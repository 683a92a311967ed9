package org.berrywatt.server.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.IrradianceRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReportAnswer;
import org.berrywatt.contract.ReportAnswer.CellReport;
import org.berrywatt.contract.ReportAnswer.Records;
import org.berrywatt.contract.ReportAnswer.TeamReport;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.TeamCommentAnswer;
import org.berrywatt.contract.TeamCommentRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class ReportsTest {

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    private Bench bench;
    private Api sloe;
    private UUID cell;
    private UUID lit;

    @BeforeEach
    void setUp() {
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
        cell = bench.cell(sloe, "S1");
        var window = bench.station("Window");
        bench.made(
                new IrradianceRequest(window, new Typed("12000", "lx"), null, Bench.NOTICED), "/api/irradiances/{id}");
        bench.made(Bench.darkRequest(cell, new Typed("0", "mV")), "/api/readings/{id}");
        lit = bench.made(
                Bench.lightRequest(cell, window, new Typed("312", "mV"), new Typed("200", "uA")), "/api/readings/{id}");
    }

    @Test
    void countsWhatWasRecordedOfWhatWasAsked() {
        assertThat(only().records())
                .extracting(Records::key, Records::recorded, Records::asked)
                .containsExactly(
                        tuple("recipe", 2, 2),
                        tuple("area", 1, 1),
                        tuple("stages", 0, 5),
                        tuple("dark", 1, 1),
                        tuple("light", 1, 1),
                        tuple("sweep", 0, 1));
    }

    @Test
    void asksNobodyForWhatOneTeamAloneNoted() {
        var rowan = bench.team("Rowan");
        var more = new ArrayList<>(Bench.cellRequest(Bench.teamId(rowan), "R1").recipe());
        more.add(new BuildValue("grindTime", "20", "min"));
        var request = new CellRequest(Bench.teamId(rowan), "R1", more, null, Bench.NOTICED);
        assertThat(rowan.put(request, "/api/cells/{id}", UUID.randomUUID())).hasStatusOk();
        bench.cell(bench.team("Elder"), "E1");
        assertThat(report().teams())
                .flatExtracting(TeamReport::cells)
                .flatExtracting(CellReport::records)
                .contains(new Records("recipe", 2, 2))
                .doesNotContain(new Records("recipe", 3, 3));
    }

    @Test
    void asksABrokenCellForNothingThatOnlyAWholeOneCanGive() {
        bench.made(
                new OutcomeRequest(cell, "dye", false, "washedOff", null, null, Bench.NOTICED), "/api/outcomes/{id}");
        assertThat(only().records())
                .extracting(Records::key, Records::recorded, Records::asked)
                .contains(tuple("stages", 1, 3))
                .noneMatch(record -> record.toList().contains("sweep"));
    }

    @Test
    void saysWhatWasSetAsideAndWhy() {
        bench.made(new SetAsideRequest(lit, "A hand over the cell"), "/api/set-asides/{id}");
        assertThat(only().asides()).singleElement().satisfies(aside -> {
            assertThat(aside.kind()).isEqualTo("light");
            assertThat(aside.reason()).isEqualTo("A hand over the cell");
        });
        assertThat(only().records()).contains(new Records("light", 0, 1));
    }

    @Test
    void showsTheLastCommentToATeamAndNoneThatWasTakenBack() {
        say("Careful records.");
        var second = say("Careful  records; now name the failure.");
        assertThat(second).hasStatusOk();
        assertThat(team().comment())
                .extracting(TeamCommentAnswer::words)
                .isEqualTo("Careful records; now name the failure.");
        say("  ");
        assertThat(team().comment()).isNull();
    }

    @Test
    void refusesACommentThatIsTooLong() {
        bench.teacher.problem(say("x".repeat(801)), ProblemCode.TEXT_TOO_LONG);
    }

    private MvcTestResult say(String words) {
        var request = new TeamCommentRequest(Bench.teamId(sloe), words);
        return bench.teacher.put(request, "/api/team-comments/{id}", UUID.randomUUID());
    }

    private ReportAnswer report() {
        return bench.teacher.answer(bench.teacher.get("/api/labdays/{id}/report", bench.day.id()), ReportAnswer.class);
    }

    private TeamReport team() {
        List<TeamReport> teams = report().teams();
        assertThat(teams).hasSize(1);
        return teams.get(0);
    }

    private CellReport only() {
        assertThat(team().cells()).hasSize(1);
        return team().cells().get(0);
    }
}
