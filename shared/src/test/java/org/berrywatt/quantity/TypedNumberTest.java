package org.berrywatt.quantity;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.berrywatt.quantity.TypedCases.Case;
import org.berrywatt.quantity.TypedCases.Reading;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.quantity.Understanding.Understood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TypedNumberTest {

    private static final Set<Quantity> VOLTAGE = Set.of(Quantity.VOLTAGE);

    static Stream<Case> cases() throws IOException {
        return TypedCases.read().numbers().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void readsAsTheGoldenFileSays(Case one) {
        Understanding<Amount> read = TypedNumber.read(one.text(), one.unit(), one.quantities());
        switch (one.means()) {
            case "one" -> isReadAs(one, read);
            case "several" -> offers(one, read);
            default -> isRefused(one, read);
        }
    }

    private static void isReadAs(Case one, Understanding<Amount> read) {
        assertThat(read).isInstanceOf(Understood.class);
        Amount amount = ((Understood<Amount>) read).meaning();
        assertThat(amount.text()).isEqualTo(one.text().strip());
        isAmount(amount, one.expected().get(0));
    }

    private static void offers(Case one, Understanding<Amount> read) {
        assertThat(read).isInstanceOf(Ambiguous.class);
        List<Amount> amounts = ((Ambiguous<Amount>) read).meanings();
        assertThat(amounts).hasSameSizeAs(one.expected());
        for (int i = 0; i < amounts.size(); i++) {
            assertThat(amounts.get(i).text()).isEqualTo(one.expected().get(i).text());
            isAmount(amounts.get(i), one.expected().get(i));
            assertThat(TypedNumber.read(amounts.get(i).text(), amounts.get(i).unitKey(), one.quantities()))
                    .isEqualTo(new Understood<>(amounts.get(i)));
        }
    }

    private static void isAmount(Amount amount, Reading expected) {
        assertThat(amount.unitKey()).isEqualTo(expected.unitKey());
        assertThat(amount.valueSi()).isCloseTo(expected.valueSi(), within(Math.ulp(expected.valueSi())));
        double step = requireNonNull(expected.resolutionSi());
        assertThat(amount.resolutionSi()).isCloseTo(step, within(Math.ulp(step)));
    }

    private static void isRefused(Case one, Understanding<Amount> read) {
        assertThat(read).isInstanceOf(Misunderstood.class);
        Misunderstood<Amount> refusal = (Misunderstood<Amount>) read;
        assertThat(refusal.slip()).isEqualTo(one.slip());
        assertThat(refusal.value()).isEqualTo(one.value());
        assertThat(refusal.expected()).isNotBlank();
    }

    @Test
    void namesTheUnitsThatWouldFit() {
        assertThat(TypedNumber.read("60 mA", "mV", VOLTAGE))
                .isEqualTo(new Misunderstood<>(Slip.WRONG_UNIT, "mA", "V, mV, µV"));
    }

    @Test
    void showsNumbersThatWouldFit() {
        assertThat(TypedNumber.read("sixty", "mV", VOLTAGE))
                .isEqualTo(new Misunderstood<>(Slip.NOT_A_NUMBER, "sixty", "60; 0.06; 0,06"));
    }

    /** Units and decimal signs never change a value, to the last bit. */
    @Test
    void readsTheSameVoltageInAnyPrefixAndWithEitherSign() {
        Random random = new Random(20261125);
        for (int i = 0; i < 2000; i++) {
            int microvolts = random.nextInt(1, 999_999);
            String volts = String.format(Locale.ROOT, "%.6f", microvolts / 1e6);
            double expected = volts(microvolts + " µV");
            assertThat(volts(volts + " V")).isEqualTo(expected);
            assertThat(volts(volts.replace('.', ',') + " V")).isEqualTo(expected);
        }
    }

    /** Whatever is typed, there is an answer. */
    @Test
    void answersToAnyText() {
        String signs = "0123456789.,'eE+-−µμΩ°²½ \u2009\u00a0VmAkx×%/^\u0000\ud83d\ude00";
        Random random = new Random(20261126);
        for (int i = 0; i < 4_000; i++) {
            StringBuilder text = new StringBuilder();
            random.ints(random.nextInt(12), 0, signs.length()).forEach(at -> text.append(signs.charAt(at)));
            assertThat(TypedNumber.read(text.toString(), "mV", VOLTAGE)).isNotNull();
            assertThat(TypedArea.read(text.toString(), "mm")).isNotNull();
        }
    }

    private static double volts(String text) {
        return ((Understood<Amount>) TypedNumber.read(text, null, VOLTAGE))
                .meaning()
                .valueSi();
    }
}
