package org.berrywatt.server.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {

    @Test
    void joinsSpacesAndComposesLetters() {
        assertThat(Words.line("name", " \u00a0Cafe\u0301  \u2003au lait ", 12)).isEqualTo("Caf\u00e9 au lait");
    }

    @Test
    void countsCharactersAndNotTheirHalves() {
        assertThat(Words.line("name", "\ud83e\uded0\ud83e\uded0", 2)).isEqualTo("\ud83e\uded0\ud83e\uded0");
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Words.line("name", "\ud83e\uded0\ud83e\uded0\ud83e\uded0", 2))
                .extracting(Refusal::code)
                .isEqualTo(ProblemCode.TEXT_TOO_LONG);
    }

    @Test
    void takesLinesForTheSameThatDifferInCaseOrWidthOnly() {
        assertThat(Words.key("\uff33\uff2c\uff2f\uff25")).isEqualTo(Words.key("Sloe"));
    }

    @Test
    void repeatsOnlyTheBeginningOfALongTextAndNothingInvisible() {
        assertThat(Words.excerpt("a\u202eb" + "x".repeat(100))).isEqualTo("a\u25a1b" + "x".repeat(37) + "\u2026");
    }

    /** Ways to make a name that cannot be seen, spills over its neighbours or turns them round (Unicode Technical Report 36). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u202eeolS",
                "Sloe\u200b",
                "Sl\u00adoe",
                "\u2066Sloe\u2069",
                "\u200f\u200eSloe",
                "Sloe\ufeff",
                "Slo\u034fe",
                "Sloe\ufe00",
                "Sloe\ufe0f",
                "\u3164",
                "\u2800\u2800",
                "Z\u0338\u0322\u0353\u0319",
                "\u0301Sloe",
                "Sloe\nElder",
                "\ud83d\udc69\u200d\ud83d\udd2c",
                "\ud800",
                "Sl\u043ee",
                "\u0405loe",
                "\u0421\u043e\u0441ne"
            })
    void refusesNamesThatHideOrTurn(String name) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> Words.line("name", name, 24))
                .satisfies(refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.TEXT_UNFIT));
    }

    /** Whatever is plain to see is taken as it was typed; the page shows it as text. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<img src=x>",
                "{{7*7}} ${x} %s",
                "O'Hara & \"Co\"",
                "\u03a9-Zellen",
                "Team \u03c0",
                "Caf\u00e9 \u00df",
                "\u0421\u043e\u0441\u043d\u0430",
                "\u05d0\u05d1\u05d2",
                "\u65e5\u672c\u30c6\u30b9\u30c8 A",
                "\u2764\ufe0f \ud83e\uded0",
                "5 \u00b5m, 5 \u03bcm, 10 k\u03a9"
            })
    void takesWhatIsPlainToSee(String name) {
        assertThat(Words.line("name", name, 40)).isEqualTo(name);
    }

    /** Pairs of Unicode Technical Standard 39, confusables. */
    @ParameterizedTest
    @CsvSource({
        "\u0430\u0441\u0435, ace",
        "\u0440\u0430\u0443, pay",
        "\u0421\u041e\u0420, cop",
        "sl\u03bfe, sloe",
        "\u2764\ufe0f, \u2764"
    })
    void takesLinesForTheSameThatLookTheSame(String one, String other) {
        assertThat(Words.key(one)).isEqualTo(Words.key(other));
    }
}
