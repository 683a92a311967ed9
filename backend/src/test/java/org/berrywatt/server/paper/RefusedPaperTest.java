package org.berrywatt.server.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.paper.PaperDesk.file;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.PaperAnswer.Fault;
import org.berrywatt.contract.PaperRequest.PaperFile;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/** Every problem has its row, its column, what stands there and what would do; none of these files changes anything. */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RefusedPaperTest {

    private static final String READING = "cell;kind;station;read_at;voltage_mv;current_ua;confirmed";
    private static final String CELL = "team;cell;area_cm2;dye_source;bake_temperature_deg_c;bake_time_min";

    private final PaperDesk desk;

    @Autowired
    RefusedPaperTest(MockMvcTester server, JsonMapper json) {
        desk = new PaperDesk(server, json);
    }

    @BeforeAll
    void bringADayIn() {
        assertThat(desk.writeAll().kept()).isTrue();
    }

    @ParameterizedTest(name = "{0}: {2} at {1}")
    @CsvSource(delimiter = '|', textBlock = """
            L9;dark;;;0;0;                   | cell       | paper.nameUnknown      | L1, R1
            L1;dark;;;;0;                    | voltage_mv | value.missing          | voltage_mv
            L1;dark;;;abc;0;                 | voltage_mv | quantity.notANumber    | 0.06
            L1;dark;;;=A1*2;0;               | voltage_mv | quantity.notANumber    | A1
            L1;dark;;;9 V;0;                 | voltage_mv | quantity.impossible    | [-3, 3] V
            L1;dark;;;1200;0;                | voltage_mv | paper.unusual          | confirmed
            L1;dark;;;40 mA;0;               | voltage_mv | quantity.wrongUnit     | mV
            L1;dark;;;40 mW;0;               | voltage_mv | quantity.unknownUnit   | mV
            L1;dark;;;0;1,234;               | current_ua | paper.ambiguous        | 1234
            L1;glow;;;0;0;                   | kind       | choice.unknown         | dark, light
            L1;light;;;412;95;               | station    | station.missing        | station
            L1;light;Lamp 7;;412;95;         | station    | paper.nameUnknown      | Lamp 1
            L1;dark;;25:10;0;0;              | read_at    | paper.time             | 2026-11-25
            L1;dark;;2026-12-24 10:15;0;0;   | read_at    | paper.time             | 10:15
            L1;dark;;;0;0;maybe              | confirmed  | choice.unknown         | yes, no
            =cmd;dark;;;0;0;                 | cell       | paper.formula          | apostrophe
            """)
    void namesWhatIsWrongWithAReading(String row, String column, String code, String sentence) {
        assertThat(desk.look(file("r.csv", READING, row)).faults())
                .anySatisfy(fault -> assertIs(fault, 2, column, code, sentence));
    }

    @ParameterizedTest(name = "{0}: {2} at {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Larch;L1;;;;                     | cell                   | label.taken         | L1
            Birch;B1;;;;                     | team                   | paper.nameUnknown   | Larch, Rowan
            Larch;;;;;                       | cell                   | value.missing       | cell
            Larch;B1;;motor oil;;            | dye_source             | choice.unknown      | hibiscus
            Larch;B1;;;4500;                 | bake_temperature_deg_c | quantity.impossible | 1000
            Larch;B1;;;450;30 mV             | bake_time_min          | quantity.wrongUnit  | min
            Larch;B1;900;;;                  | area_cm2               | quantity.impossible | 400
            Larch;a label that is too long;;;; | cell                 | text.tooLong        | 12
            """)
    void namesWhatIsWrongWithACell(String row, String column, String code, String sentence) {
        assertIs(desk.fault(file("c.csv", CELL, row)), 2, column, code, sentence);
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            cell,kind,voltage_mv                       | current_ua | paper.columnMissing | kind
            cell,kind,voltage_mv,current_ua,mood       | mood       | paper.columnUnknown | swapped_voltage_mv
            cell,kind,voltage_kv,current_ua            | voltage_kv | paper.unit          | voltage_mv
            cell,kind,voltage,current_ua               | voltage    | paper.unit          | voltage_v
            cell,kind,voltage_mv,current_ua,Cell       | Cell       | paper.columnTwice   | Cell
            """)
    void namesWhatIsWrongWithTheLineOfNames(String names, String column, String code, String sentence) {
        assertIs(desk.fault(file("r.csv", names)), 1, column, code, sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n ", "\u0089PNG\r\n\u001A\n\u0000\u0000IHDR", "team\nL\uFFFDrch"})
    void refusesWhatIsNoText(String content) {
        var fault = desk.fault(new PaperFile("picture.png", content));
        assertThat(fault.code()).isEqualTo("paper.unreadable");
        assertThat(fault.detail()).contains("UTF-8");
    }

    @Test
    void refusesATableOfSomethingElse() {
        var fault = desk.fault(file("marks.csv", "pupil,mark", "Kim,2"));
        assertThat(fault.code()).isEqualTo("paper.noTable");
        assertThat(fault.detail()).contains("readings, sweep_points");
    }

    @Test
    void refusesMoreRowsThanAClassFills() {
        var rows = IntStream.range(0, 100_000).mapToObj(i -> "L1,dark,0," + i).collect(Collectors.joining("\n"));
        var fault = desk.fault(new PaperFile("r.csv", "cell,kind,voltage_mv,current_ua\n" + rows));
        assertThat(fault.code()).isEqualTo("paper.tooManyRows");
        assertThat(fault.detail()).contains("100000", "2000");
    }

    @Test
    void refusesMoreRowsInSeveralFiles() {
        var half = IntStream.range(0, 1_500).mapToObj(i -> "T" + i).collect(Collectors.joining("\n", "team\n", ""));
        var answer = desk.send(true, new PaperFile("a.csv", half), new PaperFile("b.csv", half));
        assertThat(desk.bench
                        .teacher
                        .problem(answer, ProblemCode.PAPER_TOO_MANY_ROWS)
                        .detail())
                .contains("3000", "2000");
    }

    @Test
    void refusesMoreThanARequestMayBring() {
        var answer = desk.send(true, new PaperFile("r.csv", "x".repeat(9_000_000)));
        desk.bench.teacher.problem(answer, ProblemCode.REQUEST_TOO_LARGE);
    }

    @Test
    void refusesAQuoteThatNobodyCloses() {
        assertThat(desk.fault(file("t.csv", "team", "\"Alder")).code()).isEqualTo("paper.quoteOpen");
    }

    @Test
    void refusesARowWithMoreValuesThanColumns() {
        var fault = desk.look(file("t.csv", "team", "Alder,Birch")).faults().get(0);
        assertThat(fault.code()).isEqualTo("paper.tooManyValues");
        assertThat(fault.value()).isEqualTo("Birch");
    }

    @Test
    void refusesTheSameReadingTwice() {
        var row = "L1;dark;;;7;0;";
        var fault = desk.fault(file("r.csv", READING, row, "", row));
        assertThat(fault.row()).isEqualTo(4);
        assertThat(fault.detail()).contains("r.csv, 2");
    }

    @Test
    void tellsEverythingThatIsWrongAtOnce() {
        var answer = desk.look(
                file("r.csv", READING, "L1;glow;;99:99;abc;0;", "L9;dark;;;50 V;0;"),
                file("c.csv", CELL, "Birch;B1;;motor oil;450;"),
                file("s.csv", "cell;station;load_ohm;voltage_mv", "B1;Lamp 1;x;1"));
        assertThat(answer.faultCount()).isEqualTo(8);
        assertThat(answer.faults())
                .extracting(fault -> fault.file() + fault.row() + fault.column())
                .containsExactlyInAnyOrder(
                        "r.csv2kind",
                        "r.csv2read_at",
                        "r.csv2voltage_mv",
                        "r.csv3cell",
                        "r.csv3voltage_mv",
                        "c.csv2team",
                        "c.csv2dye_source",
                        "s.csv2load_ohm");
    }

    @Test
    void namesTheRowOfASweepAndWhatIsWrongWithTheSweepAsAWhole() {
        var names = "cell,station,load_ohm,voltage_mv";
        var tooShort = desk.fault(file("s.csv", names, "L1,Lamp 1,100,9", "L1,Lamp 1,1000,90"));
        assertThat(tooShort)
                .extracting(Fault::row, Fault::column, Fault::code)
                .containsExactly(2, null, "sweep.tooShort");

        var noLoad = desk.fault(file(
                "s.csv",
                names,
                "L1,Lamp 1,100,9",
                "L1,Lamp 1,1000,90",
                "L1,Lamp 1,0,5",
                "L1,Lamp 1,3300,270",
                "L1,Lamp 1,10000,385"));
        assertThat(noLoad)
                .extracting(Fault::row, Fault::column, Fault::code)
                .containsExactly(4, "load_ohm", "quantity.impossible");
    }

    @Test
    void asksForTheReasonWhereAHotStageWasNotSignedOff() {
        var fault = desk.fault(file("st.csv", "cell,stage,passed,note", "L1,bake,yes,"));
        assertThat(fault.code()).isEqualTo("zone.reasonNeeded");
        assertThat(desk.look(file("st.csv", "cell,stage,passed,note", "L1,bake,yes,I stood beside them at the plate"))
                        .faults())
                .isEmpty();
    }

    private static void assertIs(Fault fault, int row, String column, String code, String sentence) {
        assertThat(fault).extracting(Fault::row, Fault::column, Fault::code).containsExactly(row, column, code);
        assertThat(fault.detail()).contains(sentence).doesNotContain("{").endsWith(".");
    }
}
