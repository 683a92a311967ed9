package org.berrywatt.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every zone, hazard and code is said in plain words. */
class SafetyTextsTest {

    private static final JsonNode TEXTS = JsonMapper.shared()
            .readTree(Path.of("../frontend/web/texts/en.json").toFile());

    static Stream<String> keys() {
        return Stream.concat(
                Arrays.stream(Zone.values()).flatMap(SafetyTextsTest::keys),
                Arrays.stream(Hazard.values()).flatMap(SafetyTextsTest::keys));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void saysItInPlainWords(String key) {
        assertThat(TEXTS.path("catalogue." + key).asString("")).isNotBlank().doesNotContain("{");
    }

    @Test
    void saysNothingOfWhatTheCatalogueDoesNotHave() {
        assertThat(TEXTS.propertyNames())
                .filteredOn(key -> key.matches("catalogue\\.(zone|zonePoint|hazard\\w*)\\..*"))
                .allSatisfy(key -> assertThat(keys()).contains(key.replaceFirst("catalogue\\.", "")));
    }

    private static Stream<String> keys(Zone zone) {
        return Stream.concat(
                Stream.of("zone." + zone.key()),
                zone.points().stream().map(point -> "zonePoint." + zone.key() + "." + point));
    }

    private static Stream<String> keys(Hazard hazard) {
        var codes = Stream.concat(
                hazard.codes().stream(), hazard.strengths().stream().flatMap(strength -> strength.codes().stream()));
        return Stream.of(
                        Stream.of("hazard." + hazard.key(), "hazardCaution." + hazard.key()),
                        hazard.adultPart() ? Stream.of("hazardAdult." + hazard.key()) : Stream.<String>empty(),
                        codes.map("hazardCode."::concat))
                .flatMap(it -> it);
    }
}
