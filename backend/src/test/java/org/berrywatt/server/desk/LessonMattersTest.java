package org.berrywatt.server.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.lesson.HeaterSlot;
import org.berrywatt.server.lesson.Phone;
import org.berrywatt.server.team.Team;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LessonMattersTest {

    private static final Instant NOON = Instant.parse("2026-05-05T12:00:00Z");
    private static final UUID DAY = UUID.randomUUID();
    private static final Team TEAM = new Team(UUID.randomUUID(), DAY, "Larch", 0);
    private static final Cell CELL =
            new Cell(UUID.randomUUID(), TEAM.id(), DAY, "L1", List.of(), null, List.of(), List.of(), NOON);

    @Test
    void asksToTakeACellOffOnceItsTimeIsOverUntilItIsOut() {
        assertThat(keys(29, slot(null))).isEmpty();
        assertThat(keys(30, slot(null))).containsExactly("takeOut");
        assertThat(keys(45, slot(NOON.plusSeconds(60 * 40)))).isEmpty();
    }

    @Test
    void countsItFromTheEndOfItsTime() {
        assertThat(LessonMatters.of(at(50, List.of(slot(null)), List.of())))
                .singleElement()
                .satisfies(matter -> assertThat(matter.since()).isEqualTo(NOON.plusSeconds(60 * 30)))
                .satisfies(matter -> assertThat(matter.values()).containsEntry("heater", "Plate A"));
    }

    @Test
    void saysThatTwoCellsAreSaidToLieOnOnePlace() {
        var other = slot("plate a", 1, NOON.plusSeconds(60 * 5));
        assertThat(LessonMatters.of(at(6, List.of(slot(null), slot("Plate A", 2, NOON)), List.of())))
                .isEmpty();
        assertThat(LessonMatters.of(at(6, List.of(other, slot(null)), List.of())))
                .singleElement()
                .satisfies(matter -> {
                    assertThat(matter.kind()).isEqualTo(Kind.HEATER_TWICE);
                    assertThat(matter.since()).isEqualTo(other.inAt());
                    assertThat(matter.values()).containsEntry("cell", "L1").containsEntry("position", 1);
                });
    }

    @Test
    void namesAPhoneThatHoldsWhatTheServerRefused() {
        var phones = List.of(phone(List.of()), phone(List.of("labday.closed", "name.taken")));
        assertThat(LessonMatters.of(at(1, List.of(), phones))).singleElement().satisfies(matter -> {
            assertThat(matter.kind()).isEqualTo(Kind.REFUSED);
            assertThat(matter.teamId()).isEqualTo(TEAM.id());
            assertThat(matter.values()).containsEntry("count", 2);
        });
    }

    @Test
    void takesAPhoneThatIsThereForASignOfLife() {
        assertThat(TeamMatters.of(at(25, List.of(), List.of()))).hasSize(1);
        assertThat(TeamMatters.of(at(25, List.of(), List.of(phone(List.of()))))).isEmpty();
    }

    private static List<String> keys(int minute, HeaterSlot slot) {
        return LessonMatters.of(at(minute, List.of(slot), List.of()))
                .map(matter -> matter.kind().key())
                .toList();
    }

    private static HeaterSlot slot(@Nullable Instant outAt) {
        return new HeaterSlot(UUID.randomUUID(), CELL.id(), "Plate A", 1, 450, 30, NOON, outAt);
    }

    private static HeaterSlot slot(String heater, int position, Instant inAt) {
        return new HeaterSlot(UUID.randomUUID(), CELL.id(), heater, position, 450, 30, inAt, null);
    }

    private static Phone phone(List<String> refused) {
        return new Phone(UUID.randomUUID(), TEAM.id(), 0, refused, NOON.plusSeconds(60 * 20));
    }

    private static DeskRecord at(int minute, List<HeaterSlot> slots, List<Phone> phones) {
        return new DeskRecord(
                new LabDay(
                        DAY,
                        "Rehearsal",
                        LocalDate.of(2026, 5, 5),
                        1000,
                        4e-4,
                        "medianOfDeclared",
                        3,
                        true,
                        true,
                        false,
                        null,
                        1),
                NOON.plusSeconds(60L * minute),
                List.of(TEAM),
                Map.of(TEAM.id(), NOON),
                List.of(CELL),
                List.of(),
                Map.of(),
                Map.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                slots,
                phones);
    }
}
