package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class PlanTextsTest {

    private static final JsonNode TEXTS =
            new ObjectMapper().readTree(Path.of("../frontend/web/texts/en.json").toFile());

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");

    @Test
    void wordsEverySentenceWithItsValues() {
        var sentences = sentences().toList();

        assertThat(sentences.stream().map(Statement::key).distinct().count()).isGreaterThanOrEqualTo(12);
        sentences.forEach(sentence -> {
            assertThat(TEXTS.has(sentence.key())).as(sentence.key()).isTrue();
            Matcher placeholders =
                    PLACEHOLDER.matcher(TEXTS.path(sentence.key()).asString());
            while (placeholders.find()) {
                assertThat(sentence.values()).as(sentence.key()).containsKey(placeholders.group(1));
            }
        });
    }

    private static Stream<Statement> sentences() {
        return Stream.of(
                        teams(8, 1.5, "01", "10"),
                        teams(8, 2, "01"),
                        teams(22, 1.1, "01"),
                        teams(2, 1.5, "00", "01", "10", "11", "00", "01", "10", "11"),
                        teams(12, 100, "00", "11"),
                        teams(12, 100, "00", "01", "10"),
                        teams(1, 2, "00", "11"),
                        teams(1, 2, "00", "01", "10", "11"),
                        teams(4, 2, "01", "01"),
                        teams(2, 1.3, "01", "10", "00", "11"),
                        times(400, 1, 1),
                        times(60, 1, 1))
                .flatMap(each -> each);
    }

    private static Stream<Statement> teams(int teams, double ratio, String... cells) {
        int factors = cells[0].length();
        var runs = IntStream.range(0, teams)
                .boxed()
                .flatMap(team -> Stream.of(cells).map(cell -> new Run(team, levels(cell))))
                .toList();
        var design = new Design(
                IntStream.range(0, factors)
                        .mapToObj(i -> PublishedDesign.factor("F" + i, 2))
                        .toList(),
                runs);
        var wish = new Wish(ratio, Wish.USUAL_SPREAD);
        return Statements.of(PlanFigures.of(design, wish), wish).stream();
    }

    private static List<Integer> levels(String cell) {
        return cell.chars().mapToObj(level -> level - '0').toList();
    }

    private static Stream<Statement> times(int minutes, int heaters, int stations) {
        var workshop = new Workshop(
                IntStream.range(0, heaters)
                        .mapToObj(i -> new Heater("Plate " + i, 4))
                        .toList(),
                stations,
                minutes);
        var jobs = IntStream.range(0, 12)
                .mapToObj(i -> new Job("C" + i, 1 + i / 2, 450, 30, 15))
                .toList();
        return Stream.concat(
                TimeStatements.of(Timetable.of(jobs, workshop, 1), workshop).stream(),
                TimeStatements.of(Timetable.of(jobs.subList(0, 2), workshop, 1), workshop).stream());
    }
}
