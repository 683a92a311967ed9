package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class SentenceTextsTest {

    private static final JsonNode TEXTS = new ObjectMapper().readTree(Path.of("../frontend/web/texts/en.json"));
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");

    @Test
    void wordsEverySentenceOfAClassWithItsValues() {
        sentences().forEach(sentence -> {
            assertThat(TEXTS.has(sentence.key())).as(sentence.key()).isTrue();
            Matcher placeholders =
                    PLACEHOLDER.matcher(TEXTS.path(sentence.key()).asString());
            while (placeholders.find()) {
                assertThat(sentence.values()).as(sentence.key()).containsKey(placeholders.group(1));
            }
        });
    }

    @Test
    void namesEveryStrength() {
        assertThat(Strength.values()).allMatch(strength -> TEXTS.has("finding.strength." + strength.key()));
    }

    private static Stream<Sentence> sentences() {
        SchoolClass mixed = SchoolClass.empty()
                .sorts("elder", "abcde", 6, 7, 9, 10, 11)
                .sorts("sloe", "abcde", 1, 2, 3, 4, 5)
                .failed("sloe", 2)
                .waiting("elder", 1)
                .failed(null, 1);
        SchoolClass own = SchoolClass.empty()
                .sorts("elder", "aa", 7, 8)
                .sorts("sloe", "bb", 1, 2)
                .sorts("r", "c", 3);
        List<SchoolClass> sorts = List.of(
                SchoolClass.empty(),
                SchoolClass.empty().failed("elder", 1),
                SchoolClass.empty().sorts("elder", "a", 1).sorts("sloe", "b", 2),
                SchoolClass.empty().sorts("elder", "ab", 1, 2),
                mixed,
                own);
        return Stream.concat(
                        sorts.stream().map(SchoolClass::finding),
                        Stream.of(risingBy(1), risingBy(-1), humped()).map(SchoolClass::finding))
                .flatMap(SentenceTextsTest::all);
    }

    private static SchoolClass risingBy(double step) {
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 8; i++) {
            cells.number(i, i % 2 == 0 ? "a" : "b", 20 + step * i);
        }
        return cells;
    }

    private static SchoolClass humped() {
        SchoolClass cells = SchoolClass.empty();
        for (int i = 0; i < 4; i++) {
            cells.number(400, "a", 1 + 2 * i).number(450, "b", 20 + i).number(500, "a", 2 + 2 * i);
        }
        return cells;
    }

    private static Stream<Sentence> all(ParameterFinding finding) {
        return Stream.concat(Stream.of(finding.sentence()), finding.notes().stream());
    }
}
