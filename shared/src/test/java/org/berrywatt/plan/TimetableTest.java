package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TimetableTest {

    private static final Workshop TWO_PLATES = new Workshop(List.of(new Heater("A", 12), new Heater("B", 12)), 4, 300);

    /**
     * A batch on a plate takes 20 min up, 30 at temperature and 30 down, 80 min in all; 24 films need two large plates once
     * or one plate twice (160 min). Common practice, no source.
     */
    @Test
    void bakesTwoDozenFilmsInOneBatchOnTwoPlatesAndInTwoOnOne() {
        var two = bakes(Timetable.of(jobs(450), TWO_PLATES, 1));
        var one = bakes(Timetable.of(jobs(450), new Workshop(List.of(new Heater("A", 12)), 4, 300), 1));

        assertThat(two)
                .hasSize(2)
                .allSatisfy(slot -> assertThat(slot.toMin() - slot.fromMin()).isEqualTo(80));
        assertThat(one).hasSize(2);
        assertThat(one.get(1).toMin() - one.get(0).fromMin()).isEqualTo(160);
    }

    @Test
    void keepsOneTemperatureOnAHeaterAtATime() {
        var jobs = IntStream.range(0, 24)
                .mapToObj(i -> job(i, i % 2 == 0 ? 450 : 350))
                .toList();

        var bakes = bakes(Timetable.of(jobs, TWO_PLATES, 1));

        assertThat(bakes)
                .allSatisfy(slot -> assertThat(slot.cells())
                        .hasSizeLessThanOrEqualTo(12)
                        .allSatisfy(label -> assertThat(
                                        jobs.get(Integer.parseInt(label)).bakeC())
                                .isEqualTo(slot.bakeC())));
        assertThat(bakes).extracting(Slot::bakeC).contains(350.0, 450.0);
    }

    /** 24 cells of 11 min each take 4.4 h on one station (264 min). Common practice, no source. */
    @Test
    void queuesAtTheStation() {
        var measured = Timetable.of(jobs(450), new Workshop(TWO_PLATES.heaters(), 1, 300), 1).slots().stream()
                .filter(slot -> slot.kind() == Slot.Kind.MEASURE)
                .sorted(Comparator.comparingInt(Slot::fromMin))
                .toList();

        assertThat(measured.get(23).toMin() - measured.get(0).fromMin()).isEqualTo(264);
        for (int i = 1; i < measured.size(); i++) {
            assertThat(measured.get(i).fromMin())
                    .isGreaterThanOrEqualTo(measured.get(i - 1).toMin());
        }
    }

    /** The critical path of a class is 3.5 to 4.5 h. Common practice, no source. */
    @Test
    void endsWhenClassesDo() {
        assertThat(Timetable.of(jobs(450), TWO_PLATES, 1).endMin()).isBetween(210, 330);
    }

    @Test
    void movesEveryCellForwardOnly() {
        var slots = Timetable.of(jobs(450), TWO_PLATES, 1).slots();

        for (int i = 0; i < 24; i++) {
            var label = String.valueOf(i);
            var own = slots.stream()
                    .filter(slot -> slot.cells().contains(label) && slot.kind() != Slot.Kind.COUNTER_ELECTRODE)
                    .toList();
            assertThat(own)
                    .extracting(Slot::kind)
                    .containsExactly(Slot.Kind.FILM, Slot.Kind.BAKE, Slot.Kind.DYE_AND_CLOSE, Slot.Kind.MEASURE);
            assertThat(own.get(1).fromMin()).isGreaterThanOrEqualTo(own.get(0).toMin());
            assertThat(own.get(2).fromMin()).isGreaterThanOrEqualTo(own.get(1).toMin());
            assertThat(own.get(3).fromMin()).isGreaterThanOrEqualTo(own.get(2).toMin());
        }
    }

    @Test
    void saysWhatOneMoreHeaterOrStationWouldSave() {
        var tight = Timetable.of(jobs(450), new Workshop(List.of(new Heater("A", 8)), 4, 300), 1);
        var queue = Timetable.of(jobs(450), new Workshop(TWO_PLATES.heaters(), 1, 300), 1);

        assertThat(tight.endWithOneMoreHeaterMin()).isLessThan(tight.endMin());
        assertThat(queue.endWithOneMoreStationMin()).isLessThan(queue.endMin());
    }

    @Test
    void drawsWhoLiesWhereByTheSeed() {
        var one = bakes(Timetable.of(jobs(450), TWO_PLATES, 1)).get(0).cells();

        assertThat(one)
                .isEqualTo(bakes(Timetable.of(jobs(450), TWO_PLATES, 1)).get(0).cells());
        assertThat(one)
                .isNotEqualTo(
                        bakes(Timetable.of(jobs(450), TWO_PLATES, 2)).get(0).cells());
    }

    @Test
    void refusesNoTimeAndNothingToBakeOn() {
        assertThatExceptionOfType(PlanRefused.class)
                .isThrownBy(() -> Timetable.of(jobs(450), new Workshop(TWO_PLATES.heaters(), 4, 0), 1))
                .satisfies(refused -> assertThat(refused.fault()).isEqualTo(PlanFault.NO_TIME));
        assertThatExceptionOfType(PlanRefused.class)
                .isThrownBy(() -> Timetable.of(jobs(450), new Workshop(List.of(), 4, 300), 1))
                .satisfies(refused -> assertThat(refused.fault()).isEqualTo(PlanFault.NO_HEATER));
    }

    private static List<Slot> bakes(Timetable timetable) {
        return timetable.slots().stream()
                .filter(slot -> slot.kind() == Slot.Kind.BAKE)
                .toList();
    }

    private static List<Job> jobs(double bakeC) {
        return IntStream.range(0, 24).mapToObj(i -> job(i, bakeC)).toList();
    }

    private static Job job(int number, double bakeC) {
        return new Job(String.valueOf(number), 1 + number / 3, bakeC, 30, 20);
    }
}
