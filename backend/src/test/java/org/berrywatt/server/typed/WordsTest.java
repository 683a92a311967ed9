package org.berrywatt.server.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;

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
}
