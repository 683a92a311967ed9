package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.cell.Stage;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.MeasuringUnit;
import org.berrywatt.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever the catalogues offer has a name in plain words. */
class CatalogueTextsTest {

    private static final JsonNode TEXTS = JsonMapper.shared()
            .readTree(Path.of("../frontend/web/texts/en.json").toFile());

    static Stream<String> keys() {
        Stream<String> units = Units.all().stream().map(MeasuringUnit::key).map("unit."::concat);
        Stream<String> fields = Fields.all().stream().map(Field::key).map("field."::concat);
        Stream<String> parameters = BuildCatalogue.all().stream().flatMap(CatalogueTextsTest::keys);
        Stream<String> stages = Arrays.stream(Stage.values()).flatMap(CatalogueTextsTest::keys);
        return Stream.of(units, fields, parameters, stages).flatMap(it -> it).distinct();
    }

    @ParameterizedTest
    @MethodSource("keys")
    void namesEverythingInPlainWords(String key) {
        JsonNode text = TEXTS.path("catalogue." + key);
        assertThat(text.asString("")).isNotBlank().doesNotContain("{");
    }

    @Test
    void namesNothingThatTheCatalogueOfTheBuildDoesNotHave() {
        assertThat(TEXTS.propertyNames())
                .filteredOn(key -> key.matches("catalogue\\.(unit|field|parameter|level|stage|failure)\\..*"))
                .allSatisfy(key -> assertThat(keys()).contains(key.replaceFirst("catalogue\\.", "")));
    }

    private static Stream<String> keys(BuildParameter parameter) {
        return Stream.concat(
                Stream.of("parameter." + parameter.key()),
                parameter.levelKeys().stream().map(level -> "level." + parameter.key() + "." + level));
    }

    private static Stream<String> keys(Stage stage) {
        return Stream.concat(
                Stream.of("stage." + stage.key()),
                stage.failures().stream().map(failure -> "failure." + failure.key()));
    }
}
