package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.Units;
import org.junit.jupiter.api.Test;

class FieldsTest {

    @Test
    void offersUnitsOfTheFieldsOwnQuantityOnly() {
        for (Field field : Fields.all()) {
            assertThat(field.unitKeys())
                    .isNotEmpty()
                    .allSatisfy(key -> assertThat(Units.of(key).orElseThrow().quantity())
                            .as(field.key())
                            .isEqualTo(field.quantity()));
        }
    }

    @Test
    void hasEveryKeyOnce() {
        assertThat(Fields.all()).extracting(Field::key).doesNotHaveDuplicates();
    }

    @Test
    void holdsEveryNumberOfTheRecipe() {
        BuildCatalogue.all().stream()
                .filter(parameter -> parameter.field() != null)
                .forEach(parameter -> assertThat(Fields.of(parameter.key())).contains(parameter.field()));
    }

    @Test
    void knowsNoFieldByAnInventedKey() {
        assertThat(Fields.of("colour")).isEmpty();
    }
}
