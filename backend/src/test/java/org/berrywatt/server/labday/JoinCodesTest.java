package org.berrywatt.server.labday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.stream.Stream;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Throttle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

@ServerTest
class JoinCodesTest {

    private final JoinCodes codes;

    @Autowired
    JoinCodesTest(JoinCodes codes) {
        this.codes = codes;
    }

    @Test
    void makesCodesOfSixCharactersWithoutLookAlikes() {
        assertThat(Stream.generate(codes::reserve).limit(200))
                .doesNotHaveDuplicates()
                .allSatisfy(code -> assertThat(code).hasSize(6).doesNotContainPattern("[0O1IL2Z5S8BUa-z]"));
    }

    /** Forty teams and their day, an hour, and everybody in the school guessing with as many addresses as they like. */
    @Test
    void areNotGuessedWithinALesson() {
        var openCodes = 41;
        var chance = openCodes * Throttle.codesWithin(Duration.ofHours(1)) / JoinCodes.all();
        assertThat(chance).isBetween(0.0, 0.001);
    }

    @ParameterizedTest
    @ValueSource(strings = {"KMN347", "kmn347", "kmn-347", " KMN 347 ", "K M N 3 4 7", "kmn–347", "KMN\u00a0347"})
    void readsACodeHoweverItIsTyped(String typed) {
        assertThat(JoinCodes.read(typed)).isEqualTo("KMN347");
    }
}
