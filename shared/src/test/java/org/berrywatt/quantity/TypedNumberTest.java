package org.berrywatt.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Understood;
import org.junit.jupiter.api.Test;

class TypedNumberTest {

    private static final Set<Quantity> VOLTAGE = Set.of(Quantity.VOLTAGE);

    @Test
    void readsTheSameVoltageHoweverItIsWritten() {
        for (String text : new String[] {"60 mV", "60mV", "0,06 V", "0.06V", " 6e-2 V", "+60 mV", "60 000 µV"}) {
            assertThat(TypedNumber.read(text, null, VOLTAGE))
                    .isInstanceOfSatisfying(
                            Understood.class,
                            it -> assertThat(((Amount) it.meaning()).valueSi()).isEqualTo(0.06));
        }
    }

    @Test
    void offersBothReadingsOfASingleMarkBeforeThreeDigits() {
        Understanding<Amount> read = TypedNumber.read("1,234", "V", VOLTAGE);
        assertThat(read)
                .isInstanceOfSatisfying(
                        Ambiguous.class,
                        it -> assertThat(((Ambiguous<?>) it).meanings())
                                .extracting("valueSi")
                                .containsExactly(1.234, 1234.0));
    }
}
