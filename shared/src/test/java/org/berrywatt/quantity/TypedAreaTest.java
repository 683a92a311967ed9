package org.berrywatt.quantity;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.berrywatt.quantity.TypedCases.Case;
import org.berrywatt.quantity.TypedCases.Reading;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Misunderstood;
import org.berrywatt.quantity.Understanding.Understood;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TypedAreaTest {

    static Stream<Case> cases() throws IOException {
        return TypedCases.read().areas().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void readsAsTheGoldenFileSays(Case one) {
        Understanding<Area> read = TypedArea.read(one.text(), one.unit());
        switch (one.means()) {
            case "one" -> isReadAs(one, read);
            case "several" -> offers(one, read);
            default -> isRefused(one, read);
        }
    }

    private static void isReadAs(Case one, Understanding<Area> read) {
        assertThat(read).isInstanceOf(Understood.class);
        Area area = ((Understood<Area>) read).meaning();
        Reading expected = one.expected().get(0);
        isArea(area, expected);
        double percent = area.standardUncertaintyM2() / Math.abs(area.areaM2()) * 100;
        assertThat(percent).isCloseTo(requireNonNull(expected.relativeUncertaintyPercent()), within(0.05));
    }

    private static void offers(Case one, Understanding<Area> read) {
        assertThat(read).isInstanceOf(Ambiguous.class);
        List<Area> areas = ((Ambiguous<Area>) read).meanings();
        assertThat(areas).hasSameSizeAs(one.expected());
        for (int i = 0; i < areas.size(); i++) {
            assertThat(areas.get(i).amount().text())
                    .isEqualTo(one.expected().get(i).text());
            isArea(areas.get(i), one.expected().get(i));
            assertThat(TypedArea.read(
                            areas.get(i).amount().text(), areas.get(i).amount().unitKey()))
                    .isEqualTo(new Understood<>(areas.get(i)));
        }
    }

    private static void isArea(Area area, Reading expected) {
        assertThat(area.amount().unitKey()).isEqualTo(expected.unitKey());
        assertThat(area.areaM2()).isCloseTo(expected.valueSi(), Percentage.withPercentage(1e-12));
    }

    private static void isRefused(Case one, Understanding<Area> read) {
        assertThat(read).isInstanceOf(Misunderstood.class);
        Misunderstood<Area> refusal = (Misunderstood<Area>) read;
        assertThat(refusal.slip()).isEqualTo(one.slip());
        assertThat(refusal.value()).isEqualTo(one.value());
    }
}
