package org.berrywatt.server.catalogue;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.CatalogueAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Texts;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class CatalogueTest {

    private final Api phone;
    private final Texts texts;
    private final CatalogueAnswer catalogue;

    @Autowired
    CatalogueTest(MockMvcTester server, JsonMapper json, Texts texts) {
        this.phone = new Api(server, json, new Caller.Nobody());
        this.texts = texts;
        this.catalogue = phone.answer(phone.get("/api/catalogue"), CatalogueAnswer.class);
    }

    @Test
    void hasWordsForEveryKey() {
        assertThat(keys())
                .isNotEmpty()
                .allSatisfy(key -> assertThat(texts.has("catalogue." + key))
                        .as("catalogue." + key)
                        .isTrue());
    }

    @Test
    void offersUnitsThatItDescribes() {
        var units = catalogue.units().stream().map(CatalogueAnswer.Unit::key).toList();
        assertThat(catalogue.fields()).allSatisfy(field -> assertThat(units).containsAll(field.units()));
    }

    @Test
    void describesEveryNumberOfARecipeByAField() {
        var fields = catalogue.fields().stream().map(CatalogueAnswer.Field::key).toList();
        assertThat(catalogue.parameters())
                .filteredOn(parameter -> parameter.kind().equals("number"))
                .isNotEmpty()
                .allSatisfy(parameter -> assertThat(fields).contains(parameter.field()));
    }

    @Test
    void putsTheBakeWithinTheUsualAndAHundredTimesItOutOfThePossible() {
        var bake = field("bakeTemperature");
        // common practice, no source: a film baked at 450 to 500 degC holds
        assertThat(List.of(723.15, 773.15))
                .allMatch(kelvin -> kelvin >= bake.usualLowSi() && kelvin <= bake.usualHighSi());
        assertThat(bake.possibleHighSi()).isLessThan(45_000);
    }

    @Test
    void sparesAPhoneTheCatalogueThatItHas() {
        var tag = requireNonNull(phone.get("/api/catalogue").getResponse().getHeader("ETag"));
        var again = phone.server()
                .get()
                .uri("/api/catalogue")
                .header("If-None-Match", tag)
                .exchange();
        assertThat(again).hasStatus(304);
        assertThat(again).hasHeader("Cache-Control", "no-cache, public");
    }

    private CatalogueAnswer.Field field(String key) {
        return catalogue.fields().stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private List<String> keys() {
        return Stream.of(
                        catalogue.parameters().stream().map(parameter -> "parameter." + parameter.key()),
                        catalogue.parameters().stream().flatMap(CatalogueTest::levels),
                        catalogue.stages().stream().map(stage -> "stage." + stage.key()),
                        catalogue.stages().stream()
                                .flatMap(stage -> stage.failures().stream())
                                .map("failure."::concat),
                        catalogue.lamps().stream().map("lamp."::concat),
                        catalogue.instruments().stream().map("instrument."::concat),
                        catalogue.metrics().stream().map(metric -> "metric." + metric.key()),
                        catalogue.metrics().stream()
                                .flatMap(metric -> metric.counts().stream())
                                .map("count."::concat),
                        catalogue.units().stream().map(unit -> "unit." + unit.key()))
                .flatMap(keys -> keys)
                .toList();
    }

    private static Stream<String> levels(CatalogueAnswer.Parameter parameter) {
        return parameter.levels().stream().map(level -> "level." + parameter.key() + "." + level);
    }
}
