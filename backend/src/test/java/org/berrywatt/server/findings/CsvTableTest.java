package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.contract.FindingsTableAnswer;
import org.berrywatt.contract.FindingsTableAnswer.Column;
import org.berrywatt.contract.FindingsTableAnswer.Fault;
import org.berrywatt.contract.FindingsTableRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.findings.Standing;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTableTest {

    @Test
    void readsCellsWithTheirTeamsAndLevels() {
        var table = table("dye;bake;team;power\nhibiscus;450;Larch;0,45\nblackberry;450,0;Larch;defekt\n;300;Rowan;\n");

        var rows = table.study().rows();
        assertThat(rows)
                .extracting(StudyRow::label, row -> row.team().name(), StudyRow::standing)
                .containsExactly(
                        tuple("2", "Larch", Standing.COUNTS),
                        tuple("3", "Larch", Standing.FAILED),
                        tuple("4", "Rowan", Standing.WAITING));
        assertThat(rows.get(0).subject().performance()).isEqualTo(0.45);
        assertThat(rows.get(1).levels()).containsExactly("blackberry", "450");
        assertThat(rows.get(2).levels()).containsExactly(null, "300");
        assertThat(table.study().columns())
                .containsExactly(
                        new org.berrywatt.server.findings.Column("dye", false, null),
                        new org.berrywatt.server.findings.Column("bake", true, null));
    }

    /** RFC 4180, 2.5 to 2.7: quotes may hold separators, line ends, and quotes written twice. */
    @Test
    void readsQuotedValuesAndCountsLinesOfTheFile() {
        var lines = CsvLines.of("\uFEFFa,b\r\n\"x, y\",\"say \"\"so\"\"\"\r\n\r\n\"two\nlines\",2\r\nlast,3");

        assertThat(lines.lines())
                .extracting(CsvLines.Line::number, CsvLines.Line::values)
                .containsExactly(
                        tuple(1, java.util.List.of("a", "b")),
                        tuple(2, java.util.List.of("x, y", "say \"so\"")),
                        tuple(4, java.util.List.of("two\nlines", "2")),
                        tuple(6, java.util.List.of("last", "3")));
    }

    @Test
    void tellsEveryFaultByLineColumnAndValue() {
        var found = look("dye,team,power\na,T,about 5\nb,T,-2\nc,T,7,8\n");

        assertThat(found.problems()).containsExactly(new Fault(4, null, "tooManyValues", "8", "[1, 3]"));
        assertThat(look("dye,team,power\na,T,about 5\nb,T,-2\nc,T,7\n").problems())
                .containsExactly(
                        new Fault(2, "power", "noNumber", "about 5", ""),
                        new Fault(3, "power", "outOfRange", "-2", "[0, 1e9]"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | rows columns",
                "dye,power\\na,1 | rows",
                "power\\n1\\n2\\n3 | columns",
                "dye,,power\\na,b,1\\na,b,1\\na,b,1 | nameMissing",
                "dye,dye,power\\na,b,1\\na,b,1\\na,b,1 | nameTwice",
                "dye,power\\na,1\\n\"b,1\\nc,1 | openQuote rows",
                "dye,power\\na\\u0007,1\\nb,1\\nc,1 | unfit",
            })
    void namesWhatIsWrongWithAFile(String csv, String kinds) {
        var text = csv.replace("\\n", "\n").replace("\\u0007", "\u0007");
        assertThat(new CsvTable(new FindingsTableRequest(text, null, null, null, null, null))
                        .look().problems().stream().map(Fault::kind).collect(Collectors.joining(" ")))
                .isEqualTo(kinds);
    }

    @Test
    void tellsWhereAColumnOfNumbersHoldsAWord() {
        assertThat(look("bake,team,power\n450,T,1\n~400,T,2\n350,T,3\n").columns())
                .filteredOn(column -> column.name().equals("bake"))
                .extracting(Column::kind, Column::oddRow, Column::oddValue)
                .containsExactly(tuple("sort", 3, "~400"));
    }

    @Test
    void setsNamesAsideThatNoTwoCellsCouldShare() {
        var csv = IntStream.rangeClosed(1, 201)
                .mapToObj(i -> "piece " + i + ",T," + i)
                .collect(Collectors.joining("\n", "serial,team,power\n", "\n"));

        assertThat(look(csv).columns()).extracting(Column::use).containsExactly("setAside", "team", "outcome");
        assertThat(table(csv).study().columns()).isEmpty();
    }

    @Test
    void refusesToCompareAFileWithAFault() {
        assertThatThrownBy(() -> table("dye,team,power\na,T,x\nb,T,2\nc,T,7\n").study())
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.FINDINGS_TABLE_FAULT));
    }

    @Test
    void refusesAColumnThatIsNotThere() {
        var request = new FindingsTableRequest("a,b\n1,2\n1,2\n1,2", "c", null, null, null, null);
        assertThatThrownBy(() -> new CsvTable(request))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.values())
                                .containsEntry("value", "c")
                                .containsEntry("limit", "a, b"));
    }

    @Test
    void refusesAFileThatIsTooLarge() {
        var request = new FindingsTableRequest(" ".repeat(CsvTable.MOST_CHARACTERS + 1), null, null, null, null, null);
        assertThatThrownBy(() -> new CsvTable(request))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.FINDINGS_TABLE_TOO_LARGE));
    }

    private static FindingsTableAnswer look(String csv) {
        return table(csv).look();
    }

    private static CsvTable table(String csv) {
        return new CsvTable(new FindingsTableRequest(csv, "power", null, "team", null, null));
    }
}
