package org.berrywatt.server.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.paper.PaperDesk.file;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Objects;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.PaperAnswer;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.PaperTableAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class PaperTest {

    @Autowired
    private MockMvcTester server;

    @Autowired
    private JsonMapper json;

    private PaperDesk desk;

    @BeforeEach
    void layOut() {
        desk = new PaperDesk(server, json);
    }

    @Test
    void bringsADayInFromItsTablesInWhateverOrderTheyCome() {
        var answer = desk.writeAll();

        assertThat(answer.faults()).isEmpty();
        assertThat(answer.kept()).isTrue();
        assertThat(answer.sheets().stream().mapToInt(PaperAnswer.Sheet::fresh).sum())
                .isEqualTo(2 + 1 + 2 + 2 + 3 + 1);
        assertThat(desk.cells()).extracting(CellAnswer::label).containsExactly("L1", "R1");
        assertThat(desk.readings("L1")).extracting(ReadingAnswer::kind).containsExactly("dark", "light", "sweep");
    }

    @Test
    void countsAReadingForTheTimeOnThePaper() {
        desk.writeAll();
        assertThat(desk.readings("R1"))
                .singleElement()
                .satisfies(reading -> assertThat(reading.by()).isEqualTo("teacher"))
                .extracting(ReadingAnswer::readAt, InstanceOfAssertFactories.INSTANT)
                .isBetween(Instant.parse("2026-11-25T10:20:00Z"), Instant.parse("2026-11-25T10:20:01Z"));
    }

    @Test
    void makesResultsOfWhatCameFromPaper() {
        desk.writeAll();
        var cell = desk.cells().get(0);
        var result = desk.bench.teacher.answer(
                desk.bench.teacher.get("/api/cells/{id}/result", cell.id()), CellResultAnswer.class);
        assertThat(result.standing()).isEqualTo("counts");
    }

    @Test
    void addsNothingTwice() {
        desk.writeAll();

        var again = desk.writeAll();

        assertThat(again.kept()).isTrue();
        assertThat(again.sheets()).allSatisfy(sheet -> assertThat(sheet.fresh()).isZero());
        assertThat(desk.readings("L1")).hasSize(3);
    }

    @Test
    void addsTheRowsThatAreNewInAFileThatComesAgain() {
        desk.writeAll();
        var longer = new PaperFile("readings.csv", PaperDesk.READINGS.csv() + "\nR1,light,Lamp 1,10:40,381 mV,82\n");

        assertThat(desk.write(longer).sheets().get(0))
                .extracting(PaperAnswer.Sheet::fresh, PaperAnswer.Sheet::already)
                .containsExactly(1, 3);
        assertThat(desk.readings("R1")).hasSize(2);
    }

    @Test
    void looksWithoutWriting() {
        var answer = desk.look(PaperDesk.ALL.toArray(PaperFile[]::new));
        assertThat(answer.faults()).isEmpty();
        assertThat(answer.kept()).isFalse();
        assertThat(desk.cells()).isEmpty();
    }

    @Test
    void writesNothingOfFilesWithAFault() {
        var wrong = file("readings.csv", "cell,kind,station,voltage_mv,current_ua", "L1,dark,,40 mA,0");

        var answer = desk.write(PaperDesk.TEAMS, PaperDesk.CELLS, wrong);

        assertThat(answer.kept()).isFalse();
        assertThat(answer.faultCount()).isEqualTo(1);
        assertThat(desk.cells()).isEmpty();
    }

    @Test
    void takesSemicolonsDecimalCommasAMarkAndOtherUnits() {
        desk.writeAll();
        var german = new PaperFile("readings.csv", """
                \uFEFFcell;kind;station;read_at;voltage (V);current (mA)\r
                R1;Lichtablesung;Lamp 1;25.11.2026 10:50;0,412;0,095\r
                """);
        var english = new PaperFile("readings.csv", german.csv().replace("Lichtablesung", "Light reading"));

        assertThat(desk.write(english).faults()).isEmpty();

        assertThat(Objects.requireNonNull(desk.readings("R1").get(1).voltageV()))
                .isEqualTo(0.412);
        assertThat(Objects.requireNonNull(desk.readings("R1").get(1).currentA()))
                .isEqualTo(95e-6);
    }

    @Test
    void saysInTheTidyTablesWhatCameFromPaper() {
        desk.writeAll();
        var table = desk.bench.teacher.get("/api/labdays/{id}/tables/paper.csv", desk.bench.day.id());
        assertThat(new String(table.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8))
                .contains("readings,readings.csv,3,teacher")
                .contains("sweep_points,sweep_points.csv,2,teacher");
    }

    @Test
    void refusesADayThatIsClosed() {
        desk.bench.setEntry(false);
        var problem = desk.bench.teacher.problem(desk.send(true, PaperDesk.TEAMS), ProblemCode.LABDAY_CLOSED);
        assertThat(problem.detail()).contains("closed");
    }

    @Test
    void givesOutEveryTableWithItsLineOfNames() {
        var tables = desk.bench.teacher.answers(desk.bench.teacher.get("/api/paper"), PaperTableAnswer.class);
        assertThat(tables).hasSize(PaperTable.values().length);
        assertThat(tables).allSatisfy(table -> {
            assertThat(table.columns()).noneMatch(column -> column.meaning().startsWith("data."));
            var template = desk.bench.teacher.get("/api/paper/{table}.csv?decimalComma=true", table.table());
            var text = new String(template.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
            assertThat(text).startsWith("\uFEFF" + table.columns().get(0).name());
            assertThat(desk.look(new PaperFile("x.csv", text)).sheets().get(0).table())
                    .isEqualTo(table.table());
            assertThat(desk.look(new PaperFile("x.csv", text)).faults()).isEmpty();
        });
    }
}
