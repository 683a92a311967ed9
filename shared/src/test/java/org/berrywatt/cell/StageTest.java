package org.berrywatt.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StageTest {

    @Test
    void followsTheBench() {
        assertThat(Stage.values())
                .extracting(Stage::key)
                .containsExactly("film", "bake", "dye", "counterElectrode", "fill", "measure");
    }

    @Test
    void warnsOfHeatAtThePlateAndTheCandle() {
        assertThat(Stage.values()).filteredOn(Stage::hot).containsExactly(Stage.BAKE, Stage.COUNTER_ELECTRODE);
    }

    @Test
    void endsEveryListOfFailuresWithAnother() {
        for (Stage stage : Stage.values()) {
            assertThat(stage.failures()).doesNotHaveDuplicates().endsWith(FailureKind.OTHER);
        }
    }

    @Test
    void usesEveryKindOfFailure() {
        Set<FailureKind> used = EnumSet.noneOf(FailureKind.class);
        Arrays.stream(Stage.values()).forEach(stage -> used.addAll(stage.failures()));
        assertThat(used).containsExactlyInAnyOrder(FailureKind.values());
    }

    @Test
    void knowsItsOwnFailuresOnly() {
        assertThat(Stage.DYE.failure("washedOff")).contains(FailureKind.WASHED_OFF);
        assertThat(Stage.BAKE.failure("washedOff")).isEmpty();
        assertThat(Stage.of("dye")).contains(Stage.DYE);
        assertThat(Stage.of("picnic")).isEmpty();
    }
}
